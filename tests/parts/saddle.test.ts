import { describe, expect, it } from 'vitest';
import { degrees } from '../../core/base/quantity.ts';
import { copeReach, cutBack, saddleReach } from '../../core/parts/index.ts';

const [r, p] = [2.375 / 2, 2.875 / 2];

/** Where a line on the branch's surface enters the post, found by stepping along it: no formula but x² + y² = p². */
function enters(branch: number, post: number, beta: number, phi: number): number {
  // Post along z. Branch axis in the x-z plane, β from the post's axis; u is across it in that plane, on the obtuse-angle side at φ = 0.
  const axis = { x: Math.sin(beta), z: Math.cos(beta) };
  const across = { x: Math.cos(beta), z: -Math.sin(beta) };
  const at = (w: number): number => {
    const x = axis.x * w + across.x * branch * Math.cos(phi);
    const y = branch * Math.sin(phi);
    return Math.hypot(x, y) - post;
  };
  let [low, high] = [0, 100];
  // From outside in: the branch is cut where it first meets the post.
  if (at(high) <= 0) throw new Error('starts inside');
  for (let w = high; w > -100; w -= 0.001) {
    if (at(w) <= 0) {
      [low, high] = [w, w + 0.001];
      break;
    }
  }
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (at(middle) <= 0) low = middle;
    else high = middle;
  }
  return low;
}

describe('the saddle of a 2 in rail on a 2 1/2 in post', () => {
  it('has the cut-backs of the geometry contract\'s worked values, square on', () => {
    const square = degrees(90);
    const table = [[0, 0.6274], [22.5, 0.5537], [45, 0.3567], [67.5, 0.1188], [90, 0]] as const;
    for (const [phi, back] of table) expect(cutBack(r, p, square, degrees(phi))).toBeCloseTo(back, 4);
  });

  it('has the reaches of the worked values at 70°: 1.0975 at 0, 1.9620 at 180°', () => {
    expect(saddleReach(r, p, degrees(70), 0)).toBeCloseTo(1.0975, 4);
    expect(saddleReach(r, p, degrees(70), Math.PI)).toBeCloseTo(1.962, 4);
  });

  it('has a long point of 0.8101 at the sides and half the post at top and bottom (worked values)', () => {
    expect(copeReach(r, p).long).toBeCloseTo(0.8101, 4);
    expect(copeReach(r, p).short).toBe(1.4375);
  });

  it('is where lines on the branch enter the post, by stepping along them', () => {
    for (const beta of [90, 78, 70, 55]) {
      for (let phi = 0; phi < 360; phi += 30) {
        expect(saddleReach(r, p, degrees(beta), degrees(phi))).toBeCloseTo(enters(r, p, degrees(beta), degrees(phi)), 6);
      }
    }
  });

  it('counts cut-backs from the longest point, at every angle between the axes', () => {
    for (const beta of [90, 80, 65, 50]) {
      const backs = Array.from({ length: 3600 }, (_, i) => cutBack(r, p, degrees(beta), degrees(i / 10)));
      expect(Math.min(...backs)).toBeGreaterThanOrEqual(-1e-12);
      expect(Math.min(...backs)).toBeLessThan(1e-4);
    }
  });

  it('throws for a branch as thick as the post', () => {
    expect(() => saddleReach(p, p, degrees(90), 0)).toThrow('1.4375');
  });
});
