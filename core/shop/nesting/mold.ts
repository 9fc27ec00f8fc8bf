import { contourBox, flatArea } from '../../base/flat-curves.ts';
import { contourPolygon } from '../../base/flat-polygon.ts';
import { type Contour, type FlatShape } from '../../base/flat-shape.ts';
import { type Vec } from '../../base/points.ts';
import { moveShape, type Turn } from '../plates/move-shape.ts';
import { convexParts } from './convex-parts.ts';
import { hullOf } from './hull.ts';

/** A part turned one way, its lower left corner at the origin, as convex pieces that hold all its metal. */
export interface Mold {
  readonly id: string;
  readonly turn: Turn;
  /** From the turned shape's own origin to its lower left corner's place. */
  readonly shift: Vec;
  readonly width: number;
  readonly height: number;
  readonly area: number;
  readonly parts: readonly (readonly Vec[])[];
}

/** Steps of arcs here: 2 % of the radius round the metal at most, and 8 % inside a hole. */
const ARC_STEP = Math.PI / 8;
const HOLE_STEP = Math.PI / 4;
/** Pieces beyond which a part is taken for its hull: each pair of pieces of two parts is weighed. */
const MOST_PARTS = 14;

/** The size of a part that a hole might take: its two sides with the spacing on both, the shorter first. */
export type Guest = readonly [shorter: number, longer: number];

/** The molds of a part in these turns, those that come out alike once. Holes that could take none of the guests are as filled. */
export function moldsOf(id: string, shape: FlatShape, turns: readonly Turn[], guests: readonly Guest[]): readonly Mold[] {
  const seen = new Set<string>();
  return turns.flatMap((turn) => {
    const turned = moveShape(shape, { x: 0, y: 0 }, turn);
    const { left, right, low, high } = contourBox(turned.outer);
    const placed = moveShape(turned, { x: -left, y: -low });
    const outer = contourPolygon(placed.outer, 'around', ARC_STEP);
    const holes = placed.holes.filter((hole) => guests.some((guest) => mayHold(hole, guest))).map((hole) => contourPolygon(hole, 'within', HOLE_STEP));
    const parts = piecesOf(outer, holes);
    const key = [outer, ...holes].flat().map(({ x, y }) => `${x.toFixed(6)} ${y.toFixed(6)}`).toSorted().join(';');
    if (seen.has(key)) return [];
    seen.add(key);
    return [{ id, turn, shift: { x: -left, y: -low }, width: right - left, height: high - low, area: flatArea(shape), parts }];
  });
}

/** Parts lie square to the sheet, so a round hole holds a rectangle by its diagonal; a part need not fill the box round it, which is left aside. */
function mayHold(hole: Contour, [shorter, longer]: Guest): boolean {
  if (hole.kind === 'circle') return Math.hypot(shorter, longer) <= 2 * hole.radius;
  const { left, right, low, high } = contourBox(hole);
  const [wide, tall] = [right - left, high - low];
  return Math.min(wide, tall) >= shorter && Math.max(wide, tall) >= longer;
}

/** With its holes, without them, or its hull: the first that is few enough pieces. All hold the metal. */
function piecesOf(outer: readonly Vec[], holes: readonly (readonly Vec[])[]): readonly (readonly Vec[])[] {
  const open = convexParts(outer, holes);
  if (open.length <= MOST_PARTS) return open;
  const filled = convexParts(outer, []);
  return filled.length <= MOST_PARTS ? filled : [hullOf(outer)];
}
