import { describe, expect, it } from 'vitest';
import { degrees } from '../../core/base/quantity.ts';
import { bendAngle, chord, gaugeChord, gaugeRise, orderLength, radiusFromRise, rise, setRadius } from '../../core/parts/index.ts';

/** The rise of an arc's middle over its chord, from points of the circle alone. */
function measuredRise(radius: number, half: number): number {
  // Height of the circle at its top less its height where it is `half` to the side, by bisection on x² + y² = r².
  let [low, high] = [0, radius];
  for (let i = 0; i < 200; i++) {
    const y = (low + high) / 2;
    if (half * half + y * y < radius * radius) low = y;
    else high = y;
  }
  return radius - low;
}

describe('a rolled piece', () => {
  it('of 20° on the crowd fence has the chord and rise of the geometry contract\'s worked values', () => {
    expect(chord(145.2921, degrees(20))).toBeCloseTo(50.4594, 4);
    expect(rise(145.2921, degrees(20))).toBeCloseTo(2.2073, 4);
  });

  it('takes the angle of its length over its radius', () => {
    expect(bendAngle(145.2921, 145.2921 * 0.7)).toBeCloseTo(0.7, 12);
  });

  it('is ordered with the ends that the rolls hold and set to the radius that springs back to the one wanted', () => {
    expect(orderLength(100, 8)).toBe(116);
    // Springback = 1 - set / got: a set of 90 that comes out at 100 is a springback of 0.1.
    expect(setRadius(100, 0.1)).toBe(90);
  });
});

describe('the gauge rise', () => {
  it('is 0.500871 at radius 144 and a chord of 24: the geometry contract\'s worked sagitta', () => {
    expect(gaugeRise(144, 24)).toBeCloseTo(0.500871, 6);
  });

  it('is what the circle itself measures', () => {
    for (const radius of [58.8, 144.1, 1200]) {
      for (const gauge of [6, 24, 36, 96]) expect(gaugeRise(radius, gauge)).toBeCloseTo(measuredRise(radius, gauge / 2), 9);
    }
  });

  it('throws for a straightedge longer than the circle is wide', () => {
    expect(() => gaugeRise(10, 21)).toThrow('21');
    expect(gaugeRise(10, 20)).toBe(10);
  });
});

describe('the gauge chord', () => {
  it('is the shop\'s where the piece is long enough', () => {
    expect(gaugeChord(144, degrees(20), 36)).toBe(36);
  });

  it('is 0.9 of the piece\'s inside chord, down to a whole inch, where it is not', () => {
    // 2·144·sin 5° = 25.10; 0.9 of it 22.59.
    expect(gaugeChord(144, degrees(10), 36)).toBe(22);
    expect(gaugeChord(144, degrees(10), 22.5)).toBe(22.5);
    expect(gaugeChord(144, degrees(10), 22.6)).toBe(22);
  });

  it('is never longer than 0.9 of the inside chord', () => {
    for (let angle = 2; angle < 180; angle += 3) {
      const inside = 2 * 60 * Math.sin(degrees(angle) / 2);
      expect(gaugeChord(60, degrees(angle), 36)).toBeLessThanOrEqual(Math.max(0, 0.9 * inside) + 1e-6);
    }
  });
});

describe('the radius from a measured chord and rise', () => {
  it('gives back the radius that made them', () => {
    for (const radius of [58.8, 145.2921, 1200]) {
      for (const gauge of [24, 36]) expect(radiusFromRise(gauge, measuredRise(radius, gauge / 2))).toBeCloseTo(radius, 5);
    }
  });

  it('is that of a half circle where the rise is half the chord', () => {
    expect(radiusFromRise(36, 18)).toBe(18);
  });

  it('throws where there is no rise', () => {
    expect(() => radiusFromRise(36, 0)).toThrow('0');
  });
});
