import { type FlatShape, straightPath } from '../../base/flat-shape.ts';
import { contourBox } from '../../base/flat-curves.ts';
import { type Vec } from '../../base/points.ts';
import { type Piece } from '../../parts/index.ts';
import { moveShape } from './move-shape.ts';

/**
 * The outline of a flat piece, its lower left corner at the origin; null for one that is not flat. A skin between sloping edges with
 * plumb ends is a parallelogram: its ends lean from the square by the slope.
 */
export function outlineOf(piece: Pick<Piece, 'flat' | 'flatHeight' | 'length' | 'ends'>): FlatShape | null {
  if (piece.flat !== undefined) {
    const { left, low } = contourBox(piece.flat.outer);
    return left === 0 && low === 0 ? piece.flat : moveShape(piece.flat, { x: -left, y: -low });
  }
  const { flatHeight, length, ends } = piece;
  if (flatHeight === null) return null;
  const lean = ends[0].kind === 'plumb' ? flatHeight * Math.tan(ends[0].slope) : 0;
  const [right, left] = [Math.max(0, lean), Math.max(0, -lean)];
  const corners: readonly Vec[] = [{ x: left, y: 0 }, { x: left + length, y: 0 }, { x: right + length, y: flatHeight }, { x: right, y: flatHeight }];
  return { outer: straightPath(corners), holes: [] };
}
