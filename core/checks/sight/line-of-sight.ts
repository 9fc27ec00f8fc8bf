import { distance, sub, type Vec } from '../../base/points.ts';
import { hits } from './hits.ts';
import { type SolidWall } from './solid-walls.ts';

/** A place and its height over the ground. */
export interface HighPoint {
  readonly at: Vec;
  readonly height: number;
}

/** Where a line of sight crosses a wall, and how high over the ground. */
export interface Crossing {
  readonly wall: SolidWall;
  readonly height: number;
}

/** Every wall that lies between an eye and a point, closed or open at the height of the line there. */
export function crossings(eye: HighPoint, point: HighPoint, walls: readonly SolidWall[]): readonly Crossing[] {
  const reach = distance(eye.at, point.at);
  if (reach === 0) return [];
  const to = sub(point.at, eye.at);
  const way = { x: to.x / reach, y: to.y / reach };
  return walls.flatMap((wall) => hits(eye.at, way, wall.face)
    .filter(({ t }) => t < reach)
    .map(({ t }) => ({ wall, height: eye.height + (point.height - eye.height) * (t / reach) })));
}

/** Whether a point is seen: no closed part of a wall stands in the straight line from the eye to it. */
export const isSeen = (eye: HighPoint, point: HighPoint, walls: readonly SolidWall[]): boolean =>
  crossings(eye, point, walls).every(({ wall, height }) => height < wall.from || height > wall.to);
