import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type RoofBrief, type RoofSide } from '../../core/brief/types.ts';
import { makeBrief, straight } from '../support/brief-builder.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const roof = (open: readonly RoofSide[], daylight = 0.2): RoofBrief => ({ length: inches(288), width: inches(240), open, daylight });
const padded = (over: RoofBrief | null, parts: Partial<Brief> = {}): Brief =>
  makeBrief({ chute: { width: inches(28), runs: [straight(240)] }, squeezePad: { length: inches(144), width: inches(120), roof: over }, ...parts });
const pen = { name: 'sort-1', side: 'left', gate: inches(120), path: 'sortPens[0]' } as const;

describe('past the squeeze (common practice, no source)', () => {
  it('one diverting gate at least stands, counted', () => {
    expect(findingOf(padded(null), 'sort-gate')).toMatchObject({ result: 'look', measured: 0, limit: '>= 1' });
    expect(findingOf(padded(null, { sortPens: [pen] }), 'sort-gate')).toMatchObject({ result: 'ok', measured: 1 });
    expect(findingOf(makeBrief(), 'sort-gate')).toMatchObject({ result: 'ok', measured: null, where: 'none in this project' });
  });

  it('a gate that finds no room in its fence does not count', () => {
    // Two posts of 16 in across leave less than the jamb room of 24.
    const wide = { ...padded(null, { sortPens: [pen] }), openings: [{ kind: 'man-gate' as const, run: 'sort-1', side: 'left' as const, at: inches(100), width: inches(14), path: 'openings[0]' }] };
    expect(findingOf(wide, 'sort-gate')).toMatchObject({ result: 'look', measured: 0, where: 'sortPens[0]: no gate stands there, see foul-opening' });
    expect(findingsOf(wide, 'foul-opening').map(({ result }) => result)).toEqual(['fix']);
  });

  it('the roof is open where the cattle come and where they go', () => {
    const results = (open: readonly RoofSide[]): string => findingOf(padded(roof(open)), 'roof-see-through').result;
    expect([results(['in', 'out']), results(['in', 'out', 'left']), results(['in', 'left', 'right']), results(['out']), results([])]).toEqual(['ok', 'ok', 'look', 'look', 'look']);
    expect(findingOf(padded(roof(['in'])), 'roof-see-through').where).toBe('squeeze-pad: the roof is clad where the cattle go out');
    expect(findingOf(padded(null), 'roof-see-through')).toMatchObject({ result: 'ok', where: 'none in this project' });
  });

  it('the share of daylight is reported', () => {
    expect([0, 0.2, 1].map((share) => findingOf(padded(roof(['in', 'out'], share)), 'roof-daylight')).map(({ result, measured }) => [result, measured])).toEqual([['look', 0], ['look', 0.2], ['look', 1]]);
    expect(findingOf(padded(null), 'roof-daylight')).toMatchObject({ result: 'ok', measured: null });
  });

  it('sort gates swing clear of walls and of one another, and load their posts like any leaf', () => {
    const both = padded(null, { sortPens: [pen, { ...pen, name: 'sort-2', side: 'right', path: 'sortPens[1]' }] });
    expect(findingsOf(both, 'swing-foul').map(({ result }) => result)).toEqual(['ok']);
    const loads = findingsOf(both, 'hinge-load').filter(({ where }) => where.startsWith('sortPens['));
    expect(loads).toHaveLength(4);
  });
});
