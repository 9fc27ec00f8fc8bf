import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planPoint } from '../../../core/base/points.ts';
import { evenEdges, fitView, panBy, toPlan, toScreen, type View, zoomAbout } from '../../../renderer/places/lay-out/board/view.ts';

const size = { width: 900, height: 500 };
const view: View = { scale: 0.01, middle: planPoint(120, -35) };
const place = fc.record({ x: fc.double({ min: -900, max: 1800, noNaN: true }), y: fc.double({ min: -500, max: 1000, noNaN: true }) });

describe('the view of the board', () => {
  it('shows an inch of the plan as 96 pixels times the scale, y up', () => {
    expect(toScreen(view, size, { x: 120, y: -35 })).toEqual({ x: 450, y: 250 });
    expect(toScreen(view, size, { x: 220, y: 15 }).x).toBeCloseTo(450 + 96, 9);
    expect(toScreen(view, size, { x: 220, y: 15 }).y).toBeCloseTo(250 - 48, 9);
  });

  it('goes from the screen to the plan and back', () => {
    fc.assert(fc.property(place, (at) => {
      const back = toScreen(view, size, toPlan(view, size, at));
      expect(back.x).toBeCloseTo(at.x, 6);
      expect(back.y).toBeCloseTo(at.y, 6);
    }), { seed: 1 });
  });

  it('keeps what lies under the pointer there while the sheet comes closer, at the ends of the range too', () => {
    fc.assert(fc.property(place, fc.double({ min: 0.01, max: 100, noNaN: true }), (at, factor) => {
      const under = toPlan(view, size, at);
      const seen = toScreen(zoomAbout(view, size, at, factor), size, under);
      expect(seen.x).toBeCloseTo(at.x, 4);
      expect(seen.y).toBeCloseTo(at.y, 4);
    }), { seed: 2 });
  });

  it('follows the hand when the sheet is moved', () => {
    const under = toPlan(view, size, { x: 300, y: 200 });
    const moved = toScreen(panBy(view, 40, -25), size, under);
    expect(moved.x).toBeCloseTo(340, 9);
    expect(moved.y).toBeCloseTo(175, 9);
  });

  it('fits a box between its edges', () => {
    const box = { left: -140, right: 400, low: -150, high: 530 };
    const edges = { left: 50, right: 120, low: 80, high: 20 };
    const fitted = fitView(box, size, edges);
    const upper = toScreen(fitted, size, { x: box.left, y: box.high });
    const lower = toScreen(fitted, size, { x: box.right, y: box.low });
    // The box is tall: its height fills the room, its width lies in the middle of what is left.
    expect(upper.y).toBeCloseTo(20, 6);
    expect(lower.y).toBeCloseTo(420, 6);
    expect(upper.x - 50).toBeCloseTo(900 - 120 - lower.x, 6);
    expect(upper.x).toBeGreaterThan(50);
  });

  it('fits something on a board that is hardly there', () => {
    const { scale } = fitView({ left: 0, right: 10, low: 0, high: 10 }, { width: 0, height: 0 }, evenEdges(30));
    expect(scale).toBeGreaterThan(0);
  });
});
