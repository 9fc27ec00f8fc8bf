import { describe, expect, it } from 'vitest';
import { positiveAngle, signedAngle } from '../../core/base/angle.ts';
import { boundsTouch, curveBounds } from '../../core/base/bounds.ts';
import { curveHeading, curvePart, curvePoint, type Curve } from '../../core/base/curve.ts';
import { offsetCurve } from '../../core/base/offset.ts';
import { distance, type Vec } from '../../core/base/points.ts';
import { liesOn, positionFromStart } from '../../core/base/position.ts';
import { degrees, inches } from '../../core/base/quantity.ts';
import { seeded } from '../support/random.ts';

const line: Curve<Vec> = { kind: 'line', a: { x: 3, y: 1 }, b: { x: 11, y: 7 } };
const arc = (sweep: number, start = 200): Curve<Vec> =>
  ({ kind: 'arc', center: { x: 5, y: -2 }, radius: inches(30), start: degrees(start), sweep: degrees(sweep) });

describe('angles', () => {
  it('come into one turn, the half turn itself staying positive', () => {
    expect(signedAngle(Math.PI)).toBe(Math.PI);
    expect(signedAngle(-Math.PI)).toBe(Math.PI);
    expect(signedAngle(degrees(-190))).toBeCloseTo(degrees(170), 12);
    expect(positiveAngle(-1e-17)).toBeLessThan(2 * Math.PI);
    expect(positiveAngle(degrees(725))).toBeCloseTo(degrees(5), 12);
  });
});

describe('an offset curve', () => {
  it('lies to the left of the direction, the offset away everywhere', () => {
    for (const curve of [line, arc(100), arc(-100)]) {
      for (const left of [4, -4]) {
        const beside = offsetCurve(curve, left);
        for (const f of [0, 0.3, 1]) {
          const [p, q] = [curvePoint(curve, f), curvePoint(beside, f)];
          expect(distance(p, q)).toBeCloseTo(4, 10);
          const heading = curveHeading(curve, f);
          const side = Math.cos(heading) * (q.y - p.y) - Math.sin(heading) * (q.x - p.x);
          expect(side).toBeCloseTo(left, 10);
        }
      }
    }
  });

  it('throws where no radius is left, with the radius', () => {
    expect(() => offsetCurve(arc(100), 31)).toThrow('-1');
  });
});

describe('a position on a curve', () => {
  it('is the way from the start, negative just before it', () => {
    for (const curve of [line, arc(100), arc(-100)]) {
      const size = curve.kind === 'line' ? 10 : 30 * degrees(100);
      for (const f of [-0.2, 0, 0.4, 1.2]) expect(positionFromStart(curve, curvePoint(curve, f))).toBeCloseTo(size * f, 9);
    }
  });

  it('tells what lies on the curve, its ends included', () => {
    for (const curve of [line, arc(100), arc(-100)]) {
      for (const f of [0, 0.4, 1]) expect(liesOn(curve, curvePoint(curve, f), 1e-6)).toBe(true);
      for (const f of [-0.01, 1.01]) expect(liesOn(curve, curvePoint(curve, f), 1e-6)).toBe(false);
    }
  });
});

describe('the box round a curve', () => {
  it('is the least box: it holds a thousand points of the curve and touches some on each side', () => {
    const random = seeded(7);
    for (let i = 0; i < 100; i++) {
      const curve = arc(random.between(-300, 300), random.between(-360, 360));
      const box = curveBounds(curve);
      const points = Array.from({ length: 1001 }, (_, j) => curvePoint(curve, j / 1000));
      const least = Math.min(...points.map((p) => p.x));
      const most = Math.max(...points.map((p) => p.y));
      expect(box.left).toBeLessThanOrEqual(least + 1e-9);
      expect(box.left).toBeGreaterThan(least - 0.001);
      expect(box.top).toBeGreaterThanOrEqual(most - 1e-9);
      expect(box.top).toBeLessThan(most + 0.001);
    }
  });

  it('touches another one where they share a point', () => {
    const box = curveBounds(line);
    expect(boundsTouch(box, { left: 11, bottom: 0, right: 20, top: 3 })).toBe(true);
    expect(boundsTouch(box, { left: 11.5, bottom: 0, right: 20, top: 3 })).toBe(false);
  });

  it('of a part is within that of the whole', () => {
    const whole = curveBounds(arc(250));
    const part = curveBounds(curvePart(arc(250), 0.2, 0.5));
    expect(part.left).toBeGreaterThanOrEqual(whole.left - 1e-9);
    expect(part.right).toBeLessThanOrEqual(whole.right + 1e-9);
  });
});
