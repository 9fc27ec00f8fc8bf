import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planPoint, sheetPoint } from '../../../core/base/points.ts';
import { inches, radians } from '../../../core/base/quantity.ts';
import { type BoardPicture } from '../../../core/board/index.ts';
import { type Pen, type Stroke } from '../../../core/drafting/primitives.ts';
import { measured } from '../../../renderer/places/lay-out/board/measured.ts';
import { nearestOn, pieceAt, type SteelStroke } from '../../../renderer/places/lay-out/board/nearest.ts';
import { snap } from '../../../renderer/places/lay-out/board/snap.ts';

const pen: Pen = { layer: 'STEEL', weight: 'thick', dash: 'solid' };
const post: SteelStroke = { kind: 'circle', pen, center: sheetPoint(2, 1), radius: inches(0.1), piece: 'post/a' };
const rail: SteelStroke = { kind: 'line', pen, a: sheetPoint(0, 0), b: sheetPoint(4, 0), piece: 'rail/a' };
const bend: SteelStroke = { kind: 'arc', pen, center: sheetPoint(4, 3), radius: inches(3), start: radians(-Math.PI / 2), sweep: radians(Math.PI / 2), piece: 'rail/b' };
const note: Stroke = { kind: 'line', pen: { ...pen, layer: 'SIZES' }, a: sheetPoint(0, 0.5), b: sheetPoint(4, 0.5) };
const picture: BoardPicture = { scale: 0.01, primitives: [note, rail, bend, post], box: { x: 0, y: 0, width: 7, height: 3 } };

describe('what lies under a hand', () => {
  it('is the nearest place on a stroke: none of a thousand others on it is nearer', () => {
    const place = fc.record({ x: fc.double({ min: -3, max: 9, noNaN: true }), y: fc.double({ min: -3, max: 8, noNaN: true }) });
    const sweeps = fc.double({ min: -6.2, max: 6.2, noNaN: true }).filter((sweep) => Math.abs(sweep) > 0.01);
    fc.assert(fc.property(place, sweeps, (at, sweep) => {
      const arc: SteelStroke = { ...bend, sweep: radians(sweep) };
      const near = nearestOn(arc, at);
      const far = Math.hypot(near.x - at.x, near.y - at.y);
      for (let i = 0; i <= 1000; i += 1) {
        const angle = arc.start + (sweep * i) / 1000;
        expect(far).toBeLessThanOrEqual(Math.hypot(4 + 3 * Math.cos(angle) - at.x, 3 + 3 * Math.sin(angle) - at.y) + 1e-9);
      }
    }), { seed: 5, numRuns: 60 });
    expect(nearestOn(rail, { x: 1.5, y: 2 })).toEqual({ x: 1.5, y: 0 });
    expect(nearestOn(rail, { x: -2, y: 1 })).toEqual({ x: 0, y: 0 });
    expect(nearestOn(post, { x: 2.05, y: 1 })).toEqual({ x: 2, y: 1 });
  });

  it('is a piece within reach, never a size or a note', () => {
    expect(pieceAt(picture, { x: 1, y: 0.1 }, 0.15)).toBe('rail/a');
    expect(pieceAt(picture, { x: 2, y: 1.2 }, 0.15)).toBe('post/a');
    expect(pieceAt(picture, { x: 1, y: 0.5 }, 0.15)).toBeNull();
  });

  it('draws a measure to a named place, a post or an end before a line, and to a line before nothing', () => {
    const named = [{ name: 'mouth', at: planPoint(100, 30) }];
    const at = (x: number, y: number) => snap(picture, named, planPoint(x, y), 96);
    expect(at(104, 28)).toEqual({ name: 'mouth', piece: null, at: planPoint(100, 30), far: expect.any(Number) as number });
    expect(at(205, 96)).toMatchObject({ piece: 'post/a', at: { x: 200, y: 100 } });
    expect(at(395, 6)).toMatchObject({ at: { x: 400, y: 0 } });
    expect(at(150, 5)).toMatchObject({ piece: 'rail/a', at: { x: 150, y: 0 } });
    expect(at(150, 200)).toMatchObject({ piece: null, at: { x: 150, y: 200 } });
  });

  it('is measured in the project\'s units, straight, across and up', () => {
    // 3, 4, 5.
    expect(measured({ x: 12, y: 24 }, { x: 48, y: -24 }, 'in')).toEqual({ straight: '5\'-0"', across: '3\'-0"', up: '-4\'-0"' });
    expect(measured({ x: 0, y: 0 }, { x: 100 / 25.4, y: 0 }, 'mm')).toEqual({ straight: '100 mm', across: '100 mm', up: '0 mm' });
  });
});
