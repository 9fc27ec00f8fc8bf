/** The outline of a flat part in its own plane, inches: what a table cuts. Arcs stay arcs. */
import { type Vec } from './points.ts';

/** A corner, and the bulge of the edge to the next one: tan(angle / 4), negative clockwise, 0 a straight edge. */
export interface FlatCorner extends Vec {
  readonly bulge: number;
}

/** A closed line; a path runs counter-clockwise and its last corner is joined to its first. */
export type Contour =
  | { readonly kind: 'circle'; readonly center: Vec; readonly radius: number }
  | { readonly kind: 'path'; readonly corners: readonly FlatCorner[] };

export interface FlatShape {
  readonly outer: Contour;
  readonly holes: readonly Contour[];
}

/** A path of straight edges round these points. */
export const straightPath = (points: readonly Vec[]): Contour => ({ kind: 'path', corners: points.map(({ x, y }) => ({ x, y, bulge: 0 })) });
