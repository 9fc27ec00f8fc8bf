import { type Vec } from '../../base/points.ts';
import { type Wrap } from './types.ts';

/** How far a straight piece of the printed curve may stray from the cut: far under the line's own width. Inches. */
export const CURVE_TOLERANCE = 0.002;
/** Pieces that are looked at in any case, so that no wave of the curve falls between two points. */
const LEAST = 32;
const DEEPEST = 12;

/** The cut as points from seam to seam, so near each other that no straight piece between two strays by more than CURVE_TOLERANCE. */
export function sampleWrap({ around, cutAt }: Pick<Wrap, 'around' | 'cutAt'>): readonly Vec[] {
  const at = (x: number): Vec => ({ x, y: cutAt(x) });
  const points: Vec[] = [at(0)];
  for (let i = 0; i < LEAST; i++) divide(points, at, at((around * i) / LEAST), at((around * (i + 1)) / LEAST), 0);
  return points;
}

function divide(points: Vec[], at: (x: number) => Vec, a: Vec, b: Vec, depth: number): void {
  // Half of the tolerance at three places keeps the whole between them within it.
  const strays = [0.25, 0.5, 0.75].some((f) => Math.abs(at(a.x + (b.x - a.x) * f).y - (a.y + (b.y - a.y) * f)) > CURVE_TOLERANCE / 2);
  if (!strays || depth === DEEPEST) {
    points.push(b);
    return;
  }
  const middle = at((a.x + b.x) / 2);
  divide(points, at, a, middle, depth + 1);
  divide(points, at, middle, b, depth + 1);
}
