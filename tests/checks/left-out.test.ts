import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const without = makeBrief();

describe('what a brief leaves out', () => {
  it('of catwalks is none in this project', () => {
    for (const id of ['rail-height', 'catwalk-guard', 'midrail', 'toe-board', 'rail-load', 'catwalk-skin', 'catwalk-width', 'stair-rise', 'crew-hidden'] as const) {
      expect(findingOf(without, id), id).toMatchObject({ result: 'ok', measured: null, where: 'none in this project' });
    }
    expect(findingOf(without, 'crowd-catwalk')).toMatchObject({ result: 'look', where: 'no catwalk in the brief' });
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
  });

  it('a load on a post is never guessed', () => {
    expect(findingOf(without, 'footing-load')).toMatchObject({ result: 'look', measured: null, where: 'no load was given: footings.load' });
  });
});
