import { describe, expect, it } from 'vitest';
import { distance, planPoint, unitAt } from '../../core/base/points.ts';
import { figureAt, handles } from '../../core/board/index.ts';
import { readBrief, type Brief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { changed, leastProject } from '../support/change-project.ts';

const briefOf = (pens: readonly object[]): Brief => {
  const read = readBrief(changed(leastProject(), ['holdingPens', pens]));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.brief;
};
const handlesOf = (brief: Brief) => {
  const laid = layOut(brief);
  if (!laid.ok) throw new Error(JSON.stringify(laid.faults));
  return handles(brief, laid.layout).filter(({ path }) => path.startsWith('holdingPens['));
};

describe('the handles of a holding pen', () => {
  it.each([[{ head: 60 }], [{ head: 60, width: 300 }], [{ head: 60, length: 500 }], [{ head: 60, length: 500, width: 300 }]])('come to where the hand is: %j', (pen) => {
    const others = [{ head: 30 }, pen, { head: 20 }];
    for (const handle of handlesOf(briefOf(others)).filter(({ run }) => run === 'hold-2')) {
      expect(figureAt(handle.drag, handle.at, handle.value), handle.id).toBeCloseTo(handle.value, 8);
      const way = unitAt(handle.grows);
      const hand = planPoint(handle.at.x + 12 * way.x, handle.at.y + 12 * way.y);
      const value = figureAt(handle.drag, hand, handle.value);
      expect(value).toBeCloseTo(handle.value + 12, 8);
      const field = handle.path.replace(/^holdingPens\[1\]\./, '');
      const after = handlesOf(briefOf(others.map((one, i) => (i === 1 ? { ...one, [field]: value } : one)))).find(({ id }) => id === handle.id)!;
      expect(distance(after.at, hand), handle.id).toBeLessThan(1e-6);
    }
  });
});
