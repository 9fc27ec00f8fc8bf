import { describe, expect, it } from 'vitest';
import { FARTHEST, fullSize, inSight, moved, NEAREST, pixelsPerInch, viewBoxOf, wholePaper, zoomed } from '../../../renderer/parts/sheet-gaze.ts';

const paper = { width: 17, height: 11 };
const pane = { width: 800, height: 550 };

/** Where a point of the paper stands in the pane, pixels from its middle. */
const inPane = (gaze: ReturnType<typeof wholePaper>, point: { x: number; y: number }): { x: number; y: number } => {
  const scale = pixelsPerInch(gaze, paper, pane);
  return { x: (point.x - gaze.x) * scale, y: (point.y - gaze.y) * scale };
};

describe('looking at a drawing', () => {
  it('begins with the whole paper, which is the viewBox', () => {
    expect(viewBoxOf(wholePaper(paper), paper)).toBe('0 0 17 11');
  });

  it('keeps the point under the hand where it is, nearer and farther', () => {
    const point = { x: 4, y: 9 };
    const near = zoomed(wholePaper(paper), 3, paper, point);
    expect(inPane(near, point)).toEqual({ x: expect.closeTo(inPane(wholePaper(paper), point).x, 9) as number, y: expect.closeTo(inPane(wholePaper(paper), point).y, 9) as number });
    expect(near.zoom).toBe(3);
    expect(viewBoxOf(near, paper).split(' ').map(Number).slice(2)).toEqual([5.666667, 3.666667]);
  });

  it('goes no farther than the whole paper and no nearer than it may', () => {
    expect(zoomed(wholePaper(paper), 0.2, paper)).toEqual({ ...wholePaper(paper), zoom: FARTHEST });
    expect(zoomed(wholePaper(paper), 1e6, paper).zoom).toBe(NEAREST);
  });

  it('can be as large as it prints: an inch of paper is 96 pixels, as CSS has it', () => {
    expect(pixelsPerInch(fullSize(wholePaper(paper), paper, pane), paper, pane)).toBeCloseTo(96, 9);
  });

  it('can\'t lose the paper', () => {
    const near = zoomed(wholePaper(paper), 4, paper);
    expect(moved(near, 100, -100, paper)).toEqual({ zoom: 4, x: 17, y: 0 });
    expect(moved(wholePaper(paper), 3, 3, paper)).toEqual(wholePaper(paper));
  });

  it('brings a point into sight, and stays where it is for one that is', () => {
    const near = zoomed(wholePaper(paper), 4, paper);
    expect(inSight(near, { x: 8.6, y: 5.6 }, paper)).toEqual(near);
    const found = inSight(near, { x: 1, y: 10 }, paper);
    expect(Math.abs(found.x - 1)).toBeLessThanOrEqual(17 / 8);
    expect(Math.abs(found.y - 10)).toBeLessThanOrEqual(11 / 8);
  });
});
