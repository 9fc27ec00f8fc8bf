import { describe, expect, it } from 'vitest';
import { carrierOf, carriersMeet } from '../../core/base/carrier.ts';
import { crossings } from '../../core/base/crossing.ts';
import { curvePoint, type Curve } from '../../core/base/curve.ts';
import { distance, type Vec } from '../../core/base/points.ts';
import { degrees, inches } from '../../core/base/quantity.ts';
import { seeded, type Random } from '../support/random.ts';

const line = (ax: number, ay: number, bx: number, by: number): Curve<Vec> => ({ kind: 'line', a: { x: ax, y: ay }, b: { x: bx, y: by } });
const arc = (x: number, y: number, radius: number, from: number, sweep: number): Curve<Vec> =>
  ({ kind: 'arc', center: { x, y }, radius: inches(radius), start: degrees(from), sweep: degrees(sweep) });

describe('crossings', () => {
  it('finds where two lines cross, and only where both reach', () => {
    expect(crossings(line(0, 0, 10, 10), line(0, 6, 12, 0))).toEqual([{ x: expect.closeTo(4, 12), y: expect.closeTo(4, 12) }]);
    expect(crossings(line(0, 0, 3, 3), line(0, 6, 12, 0))).toEqual([]);
    expect(crossings(line(0, 0, 3, 3), line(0, 1, 3, 4))).toEqual([]);
  });

  it('finds a line through a circle: the 3-4-5 triangle', () => {
    const places = crossings(line(-10, 3, 10, 3), arc(0, 0, 5, 0, 180));
    expect(places.map((p) => p.x)).toEqual([expect.closeTo(-4, 12), expect.closeTo(4, 12)]);
    expect(crossings(line(-10, 3, 10, 3), arc(0, 0, 5, 0, 80))).toHaveLength(1);
    expect(crossings(line(-10, 6, 10, 6), arc(0, 0, 5, 0, 180))).toEqual([]);
  });

  it('finds where two circles cross: radii 13 and 20 at centers 21 apart meet at x 5, y 12', () => {
    const places = crossings(arc(0, 0, 13, -90, 180), arc(21, 0, 20, 90, 180));
    expect(places.map((p) => Math.abs(p.y))).toEqual([expect.closeTo(12, 9), expect.closeTo(12, 9)]);
    expect(places.map((p) => p.x)).toEqual([expect.closeTo(5, 9), expect.closeTo(5, 9)]);
  });

  it('counts a tangent as touching, a miss by more than noise not', () => {
    expect(crossings(line(-5, 5, 5, 5), arc(0, 0, 5, 0, 180)).length).toBeGreaterThan(0);
    expect(crossings(line(-5, 5 + 1e-9, 5, 5 + 1e-9), arc(0, 0, 5, 0, 180)).length).toBeGreaterThan(0);
    expect(crossings(line(-5, 5.001, 5, 5.001), arc(0, 0, 5, 0, 180))).toEqual([]);
  });

  it('tells of what lies on one line or one circle', () => {
    expect(crossings(line(0, 0, 10, 0), line(6, 0, 20, 0)).length).toBeGreaterThan(0);
    expect(crossings(line(0, 0, 10, 0), line(11, 0, 20, 0))).toEqual([]);
    // 270° and then 120° more on the same circle: the last 30° lie on the first.
    expect(crossings(arc(0, 0, 50, 0, 270), arc(0, 0, 50, 270, 120)).some((p) => Math.abs(p.y - 25) < 1e-9)).toBe(true);
    expect(crossings(arc(0, 0, 50, 10, 60), arc(0, 0, 50, 80, 60))).toEqual([]);
  });

  it('agrees with the crossings of fine polylines on random pairs', () => {
    const random = seeded(20);
    for (let i = 0; i < 200; i++) {
      const a = randomCurve(random);
      const b = randomCurve(random);
      const exact = crossings(a, b);
      const coarse = polylineCrossings(a, b);
      // Each crossing that the polylines show is an exact one; an exact one may be missed only where the two nearly touch.
      for (const place of coarse) expect(Math.min(...exact.map((p) => distance(p, place)))).toBeLessThan(0.5);
      for (const place of exact) {
        expect(offCurve(a, place)).toBeLessThan(1e-6);
        expect(offCurve(b, place)).toBeLessThan(1e-6);
      }
    }
  });
});

describe('carriers', () => {
  it('meet beyond the ends of their curves', () => {
    expect(carriersMeet(carrierOf(line(0, 0, 1, 0)), carrierOf(line(7, 3, 7, 4)))).toEqual([{ x: 7, y: 0 }]);
    expect(carriersMeet(carrierOf(line(0, 0, 1, 0)), carrierOf(line(0, 3, 1, 3)))).toEqual([]);
  });
});

function randomCurve(random: Random): Curve<Vec> {
  const at = (): number => random.between(-100, 100);
  if (random.chance(0.4)) return line(at(), at(), at(), at());
  return arc(at(), at(), random.between(5, 90), random.between(-180, 180), random.between(5, 270) * random.pick([1, -1]));
}

const STEPS = 300;

function polylineCrossings(a: Curve<Vec>, b: Curve<Vec>): readonly Vec[] {
  const found: Vec[] = [];
  const side = (p: Vec, q: Vec, r: Vec): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  for (let i = 0; i < STEPS; i++) {
    const [p, q] = [curvePoint(a, i / STEPS), curvePoint(a, (i + 1) / STEPS)];
    for (let j = 0; j < STEPS; j++) {
      const [r, s] = [curvePoint(b, j / STEPS), curvePoint(b, (j + 1) / STEPS)];
      if (!(side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0)) continue;
      const t = side(r, s, p) / (side(r, s, p) - side(r, s, q));
      found.push({ x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t });
    }
  }
  return found;
}

/** How far a point lies from a curve's carrier. */
function offCurve(curve: Curve<Vec>, p: Vec): number {
  if (curve.kind === 'arc') return Math.abs(distance(p, curve.center) - curve.radius);
  const size = distance(curve.a, curve.b);
  return Math.abs((curve.b.x - curve.a.x) * (p.y - curve.a.y) - (curve.b.y - curve.a.y) * (p.x - curve.a.x)) / size;
}
