import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type FenceBrief } from '../../core/brief/types.ts';
import { fence, fences, makeBrief, section, sheet } from '../support/brief-builder.ts';
import { findingOf, findingsOf, resultsOf } from './support/checked.ts';

const all = (parts: Partial<FenceBrief>): Brief => makeBrief({ fences: fences(parts) });
const with_ = (parts: Partial<Brief['fences']>): Brief => makeBrief({ fences: { ...fences(), ...parts } });
const beside: Brief['catwalks'] = [{ run: 'chute', side: 'right', from: inches(0), to: null, width: inches(20), deckHeight: null, path: 'catwalks[0]' }];

describe('fences', () => {
  // Univ. of Arkansas Extension (MP239 companion): 60 in gentle, 72 in flighty.
  it('are high enough for the cattle in the brief', () => {
    const flighty = (height: number): Brief => {
      const brief = all({ height: inches(height), solidTo: inches(height) });
      return { ...brief, cattle: { ...brief.cattle, flighty: true } };
    };
    expect([59.9, 60].map((height) => findingOf(all({ height: inches(height), solidTo: inches(height) }), 'fence-height').result)).toEqual(['look', 'ok']);
    expect([71.9, 72].map((height) => findingOf(flighty(height), 'fence-height').result)).toEqual(['look', 'ok']);
    expect(findingOf(flighty(72), 'fence-height').limit).toBe('>= 72');
  });

  it('of two heights give two findings that name their fences', () => {
    const low = fence('fences.chute.left', { height: inches(54), solidTo: inches(54) });
    const found = findingsOf(with_({ chute: { left: low, right: fence('fences.chute.right') } }), 'fence-height');
    expect(found.map((finding) => [finding.result, finding.measured])).toEqual([['ok', 60], ['look', 54]]);
    expect(found[1]!.where).toBe('chute left: 4\'-6"');
  });

  it('stand 3 to 4 ft in the ground (Univ. of Arkansas Extension, MP239 companion)', () => {
    const at = (depth: number) => findingOf(makeBrief({ footings: { diameter: inches(12), depth: inches(depth) } }), 'post-depth').result;
    expect([35.9, 36, 48, 48.1].map(at)).toEqual(['look', 'ok', 'ok', 'look']);
    const short = findingsOf(makeBrief({ crowdPen: { pivotLength: inches(90) } }), 'post-depth');
    expect(short.map((finding) => [finding.result, finding.measured, finding.where]).filter(([result]) => result === 'look'))
      .toEqual([['look', 30, 'pivot post: 2\'-6"']]);
  });

  it('close the crowd pen to its top (common practice, no source)', () => {
    expect(resultsOf(all({}), 'solid-crowd')).toEqual(['ok']);
    expect(resultsOf(all({ solidTo: inches(56) }), 'solid-crowd')).toEqual(['look']);
    expect(resultsOf(all({ sheet: null }), 'solid-crowd')).toEqual(['look']);
  });

  it('close the perimeter, and the chute in part (common practice, no source)', () => {
    expect(resultsOf(all({}), 'solid-outer')).toEqual(['ok', 'ok']);
    const alley = (right: Partial<FenceBrief>) => with_({ alley: { left: fence('a', { solidTo: inches(0) }), right: fence('b', right) } });
    expect(resultsOf(alley({}), 'solid-outer')).toEqual(['ok', 'ok']);
    expect(findingsOf(alley({ solidTo: inches(40) }), 'solid-outer').map(({ result, where }) => [result, where])[0])
      .toEqual(['look', 'alley right: closed from 2" to 3\'-4", 5\'-0" high']);
    const chute = (right: Partial<FenceBrief>) => with_({ chute: { left: fence('a'), right: fence('b', right) } });
    expect(resultsOf(chute({ solidTo: inches(40) }), 'solid-outer')).toEqual(['ok', 'ok', 'ok']);
    expect(resultsOf(chute({ solidTo: inches(0) }), 'solid-outer')).toEqual(['ok', 'ok', 'look']);
    const decked = findingsOf({ ...chute({ solidTo: inches(0) }), catwalks: beside }, 'solid-outer').at(-1)!;
    expect([decked.result, decked.where]).toEqual(['ok', 'chute right: beside a catwalk; its skin is asked by the deck']);
  });

  it('report their clear gaps, rails and skin as they stand (from memory, no source)', () => {
    // Rows of 2.375 in from 12 to 58.8125 at an equal pitch of 11.703125; of the part-solid fence the row at 35.40625 moves to 36.
    const open = findingsOf(all({ solidTo: inches(0) }), 'rail-gap');
    expect(open.map(({ result, measured }) => [result, measured])).toEqual([['look', 12 - 1.1875], ['look', 11.703125 - 2.375]]);
    const part = findingsOf(all({ solidFrom: inches(18), solidTo: inches(36) }), 'rail-gap');
    // Under the lowest rail; between the two rails over the skin; from the lowest rail to the skin 4.8125, from the rail on the skin's top to the next.
    expect(part.map(({ measured }) => measured)).toEqual([10.8125, 9.328125, 47.109375 - 36 - 2.375]);
    expect(findingOf(all({ solidFrom: inches(2), solidTo: inches(60) }), 'rail-gap').measured).toBe(2);
    expect(findingOf(all({ solidFrom: inches(0), solidTo: inches(60) }), 'rail-gap')).toMatchObject({ result: 'ok', measured: 0 });
  });
});

describe('fences of different build in line', () => {
  it('are offset 1/4 in at most (follows from the drawing itself)', () => {
    expect(findingOf(makeBrief(), 'post-line-offset')).toMatchObject({ result: 'ok', measured: null, where: 'none in this project' });
    const chute = (parts: Partial<FenceBrief>) => with_({ chute: { left: fence('a', parts), right: fence('b', parts) } });
    // Only the outer side joins in line; post 2.875 to 3.5 in: 0.3125. Sheet 12 ga to none: 0.1046.
    expect(findingOf(chute({ post: section('pipe 3 sch 40') }), 'post-line-offset')).toMatchObject({ result: 'look', where: 'junction to chute-1, right side: 5/16"' });
    const sheets = findingOf(chute({ sheet: null }), 'post-line-offset');
    expect(sheets).toMatchObject({ result: 'ok', where: 'junction to chute-1, right side: 1/8"' });
    expect(sheets.measured).toBeCloseTo(0.1046, 9);
    // Within a hair of the limit either way: sheets of a shop's own thickness.
    const thick = (thickness: number) => chute({ sheet: { ...sheet('12 ga'), thickness: inches(0.1046 + thickness) } });
    expect([0.2499, 0.2501].map((thickness) => findingOf(thick(thickness), 'post-line-offset').result)).toEqual(['ok', 'look']);
  });
});
