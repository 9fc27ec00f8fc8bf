import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { distance, planPoint, unitAt } from '../../core/base/points.ts';
import { figureAt, handles, type Handle } from '../../core/board/index.ts';
import { type Brief, type CatwalkBrief } from '../../core/brief/types.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeBrief } from '../support/brief-builder.ts';

const walk = (parts: Partial<CatwalkBrief>): CatwalkBrief => ({ run: 'chute', side: 'left', from: inches(30), to: inches(300), width: inches(20), deckHeight: null, path: 'catwalks[0]', ...parts });
const PLACES: readonly CatwalkBrief[] = [walk({}), walk({ side: 'right' }), walk({ run: 'crowd-pen', side: 'right', to: inches(400) }), walk({ run: 'alley-1', side: 'left', to: inches(200) })];

function handlesOf(brief: Brief): readonly Handle[] {
  const laid = layOut(brief);
  if (!laid.ok) throw new Error(JSON.stringify(laid.faults));
  return handles(brief, laid.layout).filter(({ path }) => path.startsWith('catwalks['));
}

describe('the handles of a catwalk', () => {
  it.each(PLACES.map((one) => [`${one.run} ${one.side}`, one] as const))('on %s come to where the hand is when their figure is set', (_, catwalk) => {
    const found = handlesOf({ ...makeBrief(), catwalks: [catwalk] });
    expect(found.map(({ path }) => path)).toEqual(['catwalks[0].from', 'catwalks[0].to', 'catwalks[0].width']);
    for (const handle of found) {
      expect(figureAt(handle.drag, handle.at, handle.value), handle.id).toBeCloseTo(handle.value, 8);
      const hand = planPoint(handle.at.x + 3 * unitAt(handle.grows).x, handle.at.y + 3 * unitAt(handle.grows).y);
      const value = figureAt(handle.drag, hand, handle.value);
      expect(value, handle.id).toBeGreaterThan(handle.value);
      const field = handle.path.replace('catwalks[0].', '');
      const after = handlesOf({ ...makeBrief(), catwalks: [{ ...catwalk, [field]: inches(value) }] }).find(({ id }) => id === handle.id)!;
      // A hand that moves straight leaves an arc by a hair.
      expect(distance(after.at, hand), handle.id).toBeLessThan(0.1);
    }
  });
});
