import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sheetPoint } from '../../../core/base/points.ts';
import { inches, radians } from '../../../core/base/quantity.ts';
import { type Callout, type Pen, type Stroke } from '../../../core/drafting/primitives.ts';
import { penOf } from '../../../renderer/places/lay-out/board/drawn-ink.ts';
import { inkOf } from '../../../renderer/places/lay-out/board/ink.ts';

const thick: Pen = { layer: 'STEEL', weight: 'thick', dash: 'solid' };
const chain: Pen = { layer: 'CENTER', weight: 'thin', dash: 'center' };
const none: ReadonlySet<string> = new Set();
const line = (pen: Pen, piece?: string): Stroke => ({ kind: 'line', pen, a: sheetPoint(1, 2), b: sheetPoint(-0.5, 3), ...(piece === undefined ? {} : { piece }) });

/** Center of an A command from its ends, radius and flags: SVG 2, appendix B.2.4, for a circle without turn. */
function centerOf(d: string): { readonly x: number; readonly y: number }[] {
  const figures = (text: string): number[] => text.trim().split(/[ ,]+/).map(Number);
  const [move = '', ...arcs] = d.split('A');
  let [x1 = 0, y1 = 0] = figures(move.slice(1));
  return arcs.map((arc) => {
    const [r = 0, , , large = 0, sweep = 0, x2 = 0, y2 = 0] = figures(arc);
    const [hx, hy] = [(x1 - x2) / 2, (y1 - y2) / 2];
    const root = Math.sqrt(Math.max(0, (r * r * r * r - r * r * hy * hy - r * r * hx * hx) / (r * r * hy * hy + r * r * hx * hx))) * (large === sweep ? -1 : 1);
    const center = { x: root * hy + (x1 + x2) / 2, y: -root * hx + (y1 + y2) / 2 };
    [x1, y1] = [x2, y2];
    return center;
  });
}

describe('the ink of a picture', () => {
  it('is 96 pixels an inch, y down', () => {
    expect(inkOf([line(thick)], none).paths).toEqual(new Map([['thick solid', 'M96 -192L-48 -288']]));
  });

  it('is one path for a look, however many strokes there are', () => {
    const ink = inkOf([line(thick), line(chain), line(thick), line(thick)], none);
    expect([...ink.paths.keys()]).toEqual(['thick solid', 'thin center']);
    expect(ink.paths.get('thick solid')?.match(/M/g)).toHaveLength(3);
  });

  it('has an arc\'s center where the arc has it, past half a turn too, either way round', () => {
    const turn = fc.double({ min: -6.2, max: 6.2, noNaN: true }).filter((sweep) => Math.abs(sweep) > 0.2);
    fc.assert(fc.property(turn, fc.double({ min: -3, max: 3, noNaN: true }), (sweep, start) => {
      const arc: Stroke = { kind: 'arc', pen: thick, center: sheetPoint(3, -2), radius: inches(4), start: radians(start), sweep: radians(sweep) };
      for (const center of centerOf(inkOf([arc], none).paths.get('thick solid') ?? '')) {
        // Ends are rounded to a hundredth of a pixel, and a short or a half arc's center follows them less surely.
        expect(center.x).toBeCloseTo(3 * 96, -0.7);
        expect(center.y).toBeCloseTo(2 * 96, -0.7);
      }
    }), { seed: 3 });
  });

  it('sets the strokes of chosen pieces apart, and the callout that marks them', () => {
    const text: Stroke = { kind: 'text', layer: 'MARKS', text: 'R4', at: sheetPoint(1, 1), anchor: 'start', height: inches(0.125), rotation: radians(0), width: inches(0.3) };
    const callout: Callout = { kind: 'callout', view: 'plan', text: 'R4', pieces: ['rail/a'], targets: [], strokes: [text] };
    const ink = inkOf([line(thick, 'rail/a'), line(thick, 'rail/b'), callout], new Set(['rail/a']));
    expect([...ink.paths.keys()]).toEqual(['thick solid chosen', 'thick solid']);
    expect(ink.texts).toMatchObject([{ text: 'R4', chosen: true, x: 96, y: -96, height: 12 }]);
    expect(ink.texts[0]?.width).toBeCloseTo(28.8, 9);
  });

  it('draws lines as heavy as the paper\'s: 0.6 and 0.3 mm at 96 pixels an inch, chosen ones heavier', () => {
    expect(penOf('thick solid')).toEqual({ fill: 'none', 'stroke-width': '2.27' });
    expect(penOf('thin center')).toEqual({ fill: 'none', 'stroke-width': '1.13', 'stroke-dasharray': '48 5.76 9.6 5.76' });
    expect(Number(penOf('thin solid chosen')['stroke-width'])).toBeGreaterThan(2 * 2.27);
    expect(penOf('fill')).toEqual({});
  });
});
