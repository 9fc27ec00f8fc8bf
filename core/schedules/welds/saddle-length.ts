import { saddleReach } from '../../parts/index.ts';

const STEPS = 180;

/** Length of the line in which a round branch meets a round post at the angle `beta` between their axes, inches: chords of the saddle, 2° each. */
export function saddleLength(branchRadius: number, postRadius: number, beta: number): number {
  let sum = 0;
  let before = at(0);
  for (let i = 1; i <= STEPS; i += 1) {
    const next = at((2 * Math.PI * i) / STEPS);
    sum += Math.hypot(next[0] - before[0], next[1] - before[1], next[2] - before[2]);
    before = next;
  }
  return sum;

  /** A point of the branch's surface: along its axis, and across in its two directions. */
  function at(phi: number): readonly [number, number, number] {
    return [saddleReach(branchRadius, postRadius, beta, phi), branchRadius * Math.cos(phi), branchRadius * Math.sin(phi)];
  }
}
