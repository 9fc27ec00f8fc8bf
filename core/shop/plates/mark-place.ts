import { type Box } from '../../base/flat-curves.ts';
import { contourPolygon } from '../../base/flat-polygon.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { strokeText, strokeWidth, type Polyline } from '../stroke-text/index.ts';
import { PLATE_PRACTICE } from './practice.ts';

/** Places tried along each side of the part, its middle first. */
const TRIES = 9;
/** A stroke that hangs below the baseline, as a share of the height. */
const BELOW = 2 / 21;

/** A mark's strokes inside a part of this size, clear of its edges: as large and as near the middle as fits, upright; null where none does. */
export function markStrokes(mark: string, shape: FlatShape, width: number, height: number): readonly Polyline[] | null {
  const edges = [contourPolygon(shape.outer, 'within'), ...shape.holes.map((hole) => contourPolygon(hole, 'around'))];
  const { markHeights, markClear } = PLATE_PRACTICE;
  for (const tall of markHeights) {
    const wide = strokeWidth(mark, tall);
    const [spareX, spareY] = [width - wide - 2 * markClear, height - tall * (1 + BELOW) - 2 * markClear];
    if (spareX < 0 || spareY < 0) continue;
    for (const share of SHARES) {
      const at = { x: markClear + spareX * share.x, y: markClear + tall * BELOW + spareY * share.y };
      const box = { left: at.x - markClear, right: at.x + wide + markClear, low: at.y - tall * BELOW - markClear, high: at.y + tall + markClear };
      if (isClear(box, edges)) return strokeText(mark, at, tall);
    }
  }
  return null;
}

/** Shares of the room left over, from the middle outward. */
const SHARES: readonly Vec[] = Array.from({ length: TRIES * TRIES }, (_, i) => ({ x: (i % TRIES) / (TRIES - 1), y: Math.floor(i / TRIES) / (TRIES - 1) }))
  .toSorted((a, b) => Math.hypot(a.x - 0.5, a.y - 0.5) - Math.hypot(b.x - 0.5, b.y - 0.5));

/** Whether a box lies in the metal: no edge reaches into it, and its middle is inside the outline and outside every hole. */
function isClear(box: Box, [outer, ...holes]: readonly (readonly Vec[])[]): boolean {
  const middle = { x: (box.left + box.right) / 2, y: (box.low + box.high) / 2 };
  if (!encloses(outer!, middle) || holes.some((hole) => encloses(hole, middle))) return false;
  return ![outer!, ...holes].some((edges) => edges.some((a, i) => reachesInto(a, edges[(i + 1) % edges.length]!, box)));
}

function encloses(polygon: readonly Vec[], { x, y }: Vec): boolean {
  return polygon.reduce((inside, a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    return (a.y > y) !== (b.y > y) && x < a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y) ? !inside : inside;
  }, false);
}

/** Whether a line has a part inside a box (clipped to it, Liang and Barsky). */
function reachesInto(a: Vec, b: Vec, { left, right, low, high }: Box): boolean {
  const sides = [[a.x - b.x, a.x - left], [b.x - a.x, right - a.x], [a.y - b.y, a.y - low], [b.y - a.y, high - a.y]] as const;
  let [from, to] = [0, 1];
  for (const [by, room] of sides) {
    if (by === 0) {
      if (room <= 0) return false;
    } else if (by < 0) from = Math.max(from, room / by);
    else to = Math.min(to, room / by);
  }
  return from < to;
}
