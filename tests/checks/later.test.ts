import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type LaterSubjects } from '../../core/brief/types.ts';
import { type RuleId } from '../../core/checks/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const NOT_BUILT = { result: 'look', measured: null, where: 'not drawn or checked by this version' };
const NONE = { result: 'ok', measured: null, where: 'none in this project' };
const without = makeBrief();
const with_ = (parts: Partial<LaterSubjects>) => ({ ...without, later: { ...without.later, ...parts } });

const subjects: readonly (readonly [keyof LaterSubjects, readonly RuleId[]])[] = [
  ['catwalks', ['rail-height', 'catwalk-guard', 'midrail', 'toe-board', 'rail-load', 'catwalk-skin', 'catwalk-width', 'stair-rise', 'crew-hidden']],
];

describe('what this version does not build', () => {
  it.each(subjects)('%s in the brief are said to be not drawn or checked, else there are none', (subject, ids) => {
    for (const id of ids) {
      expect(findingOf(with_({ [subject]: 2 }), id), id).toMatchObject(NOT_BUILT);
      expect(findingOf(without, id), id).toMatchObject(NONE);
    }
  });

  it('no opening at all is no escape (common practice, no source)', () => {
    for (const id of ['man-gate', 'lone-animal'] as const) {
      expect(findingsOf(without, id).map(({ result, measured }) => [result, measured]), id).toEqual([['fix', 0], ['fix', 0]]);
    }
  });

  it('a squeeze pad with no sort pen has no diverting gate, and no gate leads back (common practice, no source)', () => {
    const squeezePad = { length: inches(144), width: inches(120), roof: null };
    expect(findingOf(makeBrief({ squeezePad }), 'sort-gate')).toMatchObject({ result: 'look', measured: 0 });
    expect(findingOf(without, 'return-way')).toMatchObject({ result: 'look', measured: 0 });
    const sortPens = [{ name: 'sort-1', side: 'left' as const, gate: inches(120), path: 'sortPens[0]' }];
    expect(findingOf(makeBrief({ sortPens }), 'return-way')).toMatchObject({ result: 'look', measured: 0 });
    // One on a ramp's run goes round no pen.
    expect(findingOf(with_({ catwalks: 1 }), 'crowd-catwalk')).toMatchObject({ result: 'look', where: 'no catwalk in the brief' });
  });

  it('a load on a post is never guessed', () => {
    expect(findingOf(without, 'footing-load')).toMatchObject({ result: 'look', measured: null, where: 'no load was given: footings.load' });
  });
});
