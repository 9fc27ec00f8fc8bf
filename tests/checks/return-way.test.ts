import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief, type OpeningBrief } from '../../core/brief/types.ts';
import { arc, makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut, runOf } from '../support/laid-out.ts';
import { findingOf, resultsOf } from './support/checked.ts';

/**
 * The chute's last run heads along +x, its left face at y 541 (mouth 200.9 + 120 + 206 + 14). The return leaves it at x 372, goes up,
 * turns left round 100 in, and comes to the alley's left face, x 0, whose posts' backs stand at x 5.35.
 */
const brief = (last: number, gate = true): Brief => {
  const returnAlley = { from: { run: 'chute-3', side: 'left' as const, at: inches(36) }, width: inches(36), runs: [straight(60), arc(100, 90, 'left'), straight(last)] };
  const bare = makeBrief({ alley: { runs: [straight(960)] }, returnAlley });
  const end = runOf(laidOut(bare), 'return-3').path;
  const at = inches(960 - (end.kind === 'line' ? end.b.y : NaN));
  const openings: readonly OpeningBrief[] = [{ kind: 'pen-gate', run: 'alley-1', side: 'left', at, width: inches(36), swings: 'in', hangs: 'first', hingePost: null, path: 'openings[0]' }];
  return gate ? { ...bare, openings } : bare;
};
const BACK = 0.1046 + 2.375 + 2.875;

describe('return-way (common practice, no source)', () => {
  it('is unmet where there is no way back', () => {
    expect(findingOf(makeBrief(), 'return-way')).toMatchObject({ result: 'look', measured: 0 });
  });

  it('is met by a return alley that comes to a gate of the alley: just near enough, just not', () => {
    const reach = 372 - 118;
    const near = reach - BACK - 6;
    expect(findingOf(brief(near + 0.01), 'return-way')).toMatchObject({ result: 'ok', measured: 1 });
    expect(findingOf(brief(near - 0.01), 'return-way')).toMatchObject({ result: 'look', measured: 0 });
  });

  it('is unmet where the alley has no gate there', () => {
    const found = findingOf(brief(245, false), 'return-way');
    expect(found).toMatchObject({ result: 'look', measured: 0 });
    expect(found.where).toContain('alley-1 left');
  });

  it('stands clear of the fence that it leaves and of the alley', () => {
    for (const id of ['foul-fence', 'foul-post', 'foul-path', 'swing-foul'] as const) expect(resultsOf(brief(245), id), id).toEqual(['ok']);
    const gate = laidOut(brief(245)).openings.find(({ path }) => path === 'returnAlley.from');
    expect(gate).toMatchObject({ kind: 'pen-gate', run: 'chute-3', side: 'left', width: 36, swings: 'out' });
  });
});
