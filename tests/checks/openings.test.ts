import { describe, expect, it } from 'vitest';
import { inches, pounds } from '../../core/base/quantity.ts';
import { type Brief, type OpeningBrief, type Side } from '../../core/brief/types.ts';
import { makeBrief, straight } from '../support/brief-builder.ts';
import { findingOf, findingsOf, resultsOf } from './support/checked.ts';

const NONE = { result: 'ok', measured: null, where: 'none in this project' };
const numbered = (openings: readonly OpeningBrief[]): readonly OpeningBrief[] => openings.map((one, i) => ({ ...one, path: `openings[${String(i)}]` }));
const brief = (openings: readonly OpeningBrief[], parts: Parameters<typeof makeBrief>[0] = {}): Brief => ({ ...makeBrief(parts), openings: numbered(openings) });
const manGate = (run: string, side: Side, at: number, width = 14): OpeningBrief => ({ kind: 'man-gate', run, side, at: inches(at), width: inches(width), path: '' });
const backstop = (at: number, held: 'rope' | 'pin' | 'none' = 'rope'): OpeningBrief => ({ kind: 'backstop', run: 'chute', at: inches(at), held, path: '' });

describe('man gates', () => {
  it('one in the crowd pen and one in the chute is an escape from each (common practice, no source)', () => {
    const both = [manGate('crowd-pen', 'right', 180), manGate('chute', 'left', 60)];
    expect(findingsOf(brief(both), 'man-gate').map(({ result, measured }) => [result, measured])).toEqual([['ok', 1], ['ok', 1]]);
    expect(findingsOf(brief(both.slice(0, 1)), 'man-gate').map(({ result, measured }) => [result, measured])).toEqual([['ok', 1], ['fix', 0]]);
    expect(resultsOf(brief([manGate('junction', 'left', 120)]), 'man-gate')).toEqual(['ok', 'fix']);
    expect(resultsOf(brief([manGate('alley-1', 'left', 120)]), 'man-gate')).toEqual(['fix', 'fix']);
  });

  it('are 12 to 18 in clear (from memory, no source)', () => {
    for (const [width, result] of [[12, 'ok'], [18, 'ok'], [11.9, 'look'], [18.1, 'look']] as const) {
      expect(findingOf(brief([manGate('alley-1', 'left', 120, width)]), 'man-pass'), String(width)).toMatchObject({ result, measured: width });
    }
    expect(findingOf(brief([]), 'man-pass')).toMatchObject(NONE);
    expect(findingsOf(brief([manGate('alley-1', 'left', 60), manGate('alley-1', 'left', 120, 30)]), 'man-pass').map(({ result }) => result)).toEqual(['ok', 'look']);
  });

  it('let the last animal out where one is as wide as its chute may be narrow (common practice, no source)', () => {
    // Mature, over 1200 lb: 26 less 2, and 2 for a large breed.
    const chute = (width: number, weight = 1250) => {
      const made = brief([manGate('crowd-pen', 'right', 200, 30), manGate('chute-1', 'right', 60, width)]);
      return findingsOf({ ...made, cattle: { ...made.cattle, weight: pounds(weight) } }, 'lone-animal').map(({ result, measured }) => [result, measured]);
    };
    expect(chute(26)).toEqual([['ok', 1], ['ok', 1]]);
    expect(chute(25.9)).toEqual([['ok', 1], ['fix', 0]]);
    expect(chute(24, 1200)).toEqual([['ok', 1], ['ok', 1]]);
  });
});

describe('backstops', () => {
  it('the first stands 84 to 108 in from the mouth, whatever the order of the brief (common practice, no source)', () => {
    for (const [at, result] of [[84, 'ok'], [108, 'ok'], [83.9, 'look'], [108.1, 'look']] as const) {
      expect(findingOf(brief([backstop(400), backstop(at)]), 'first-backstop'), String(at)).toMatchObject({ result, measured: at });
    }
    for (const id of ['first-backstop', 'first-backstop-held', 'backstop-count'] as const) expect(findingOf(brief([]), id)).toMatchObject(NONE);
  });

  it('the first is worked by a rope (common practice, no source)', () => {
    expect(resultsOf(brief([backstop(96, 'rope'), backstop(400, 'none')]), 'first-backstop-held')).toEqual(['ok']);
    for (const held of ['pin', 'none'] as const) expect(resultsOf(brief([backstop(96, held)]), 'first-backstop-held')).toEqual(['look']);
  });

  it('are one for each 240 in of chute at most (from memory, no source)', () => {
    const chute = (length: number) => ({ chute: { width: inches(28), runs: [straight(length)] } });
    expect(findingOf(brief([backstop(96), backstop(300)], chute(480)), 'backstop-count')).toMatchObject({ result: 'ok', measured: 240 });
    expect(findingOf(brief([backstop(96), backstop(300)], chute(479)), 'backstop-count')).toMatchObject({ result: 'look', measured: 239.5 });
  });
});

describe('an opening that fouls', () => {
  it('is a Fix with its place; one that clears is not', () => {
    // See the layout's own test: jamb post, its half, and the clear space to the end post.
    const just = 7 + 1.4375 + 3.375;
    expect(findingOf(brief([manGate('alley-1', 'left', just)]), 'foul-opening')).toMatchObject({ result: 'ok', measured: 0 });
    expect(findingOf(brief([manGate('alley-1', 'left', just - 0.5)]), 'foul-opening')).toMatchObject({ result: 'fix', measured: 0.5 });
    expect(findingOf(brief([manGate('alley-1', 'left', just - 0.5)]), 'foul-opening').where).toContain('openings[0]');
    expect(findingOf(brief([]), 'foul-opening')).toMatchObject(NONE);
  });
});
