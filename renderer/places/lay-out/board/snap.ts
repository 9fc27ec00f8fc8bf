import { distance, planPoint, type PlanPoint, type Vec } from '../../../../core/base/points.ts';
import { type BoardPicture } from '../../../../core/board/types.ts';
import { nearestOn, pointsOf, steelStrokes } from './nearest.ts';

/** How near a place draws the hand, pixels of the screen: a point before a line. */
const POINT = 13;
const LINE = 9;
/** A place with a name is meant by so much before a point of the steel, pixels. */
const NAMED = 3;

/** Something that is measured from: where it is, and the piece that it is of; null: a place that has a name of its own, or none. */
export interface Snapped {
  readonly at: PlanPoint;
  readonly piece: string | null;
}

/** A place that has a name, such as the pivot post or the mouth. */
export interface NamedPlace {
  readonly name: string;
  readonly at: PlanPoint;
}

/** What is meant by a place under the hand: a named place, a post or an end near it; else the nearest place on a face or a rail; else itself. */
export function snap(picture: BoardPicture, named: readonly NamedPlace[], at: PlanPoint, pixels: number): Snapped & { readonly name: string | null } {
  const { scale } = picture;
  const here: Vec = { x: at.x * scale, y: at.y * scale };
  const plan = ({ x, y }: Vec): PlanPoint => planPoint(x / scale, y / scale);
  let best: (Snapped & { readonly name: string | null; readonly far: number }) | null = null;
  const offer = (far: number, within: number, found: () => Snapped & { readonly name: string | null }): void => {
    if (far <= within / pixels && (best === null || far < best.far)) best = { ...found(), far };
  };
  for (const place of named) offer(Math.max(0, distance(place.at, at) * scale - NAMED / pixels), POINT, () => ({ at: place.at, piece: null, name: place.name }));
  const strokes = steelStrokes(picture);
  for (const stroke of strokes) for (const point of pointsOf(stroke)) offer(distance(point, here), POINT, () => ({ at: plan(point), piece: stroke.piece, name: null }));
  if (best !== null) return best;
  for (const stroke of strokes) {
    const point = nearestOn(stroke, here);
    offer(distance(point, here), LINE, () => ({ at: plan(point), piece: stroke.piece, name: null }));
  }
  return best ?? { at, piece: null, name: null };
}
