/** A contour as straight edges, each arc on the side that is asked for. */
import { contourCurves } from './flat-curves.ts';
import { type Contour } from './flat-shape.ts';
import { type Vec } from './points.ts';

/** Where the polygon may leave an arc: never inside the metal's curve, or never outside what the contour encloses. */
export type ArcSide = 'around' | 'within';

/** No step of an arc turns by more where nothing else is asked for: 1/64 in off the arc at a radius of 13 in. */
const MOST_TURN = Math.PI / 32;

/**
 * Corners of a polygon that holds all that a contour encloses (`around`) or lies in it (`within`), in the contour's own order. Straight
 * edges stay; an arc becomes chords where its bulge lies on the other side, and tangents where it lies on the side to be kept.
 */
export function contourPolygon(contour: Contour, side: ArcSide, mostTurn: number = MOST_TURN): readonly Vec[] {
  const ccw = contour.kind === 'circle' || turnsLeft(contour.corners);
  return contourCurves(contour).flatMap((curve): readonly Vec[] => {
    if (curve.kind === 'line') return [curve.a];
    const steps = Math.max(2, Math.ceil(Math.abs(curve.sweep) / mostTurn));
    const step = curve.sweep / steps;
    const at = (radius: number, angle: number): Vec => ({ x: curve.center.x + radius * Math.cos(angle), y: curve.center.y + radius * Math.sin(angle) });
    const swells = (curve.sweep > 0) === ccw;
    if (swells === (side === 'within')) return Array.from({ length: steps }, (_, i) => at(curve.radius, curve.start + i * step));
    const far = curve.radius / Math.cos(step / 2);
    const tangents = Array.from({ length: steps }, (_, i) => at(far, curve.start + (i + 0.5) * step));
    return contour.kind === 'circle' ? tangents : [at(curve.radius, curve.start), ...tangents];
  });
}

/** Whether a path of corners runs counter-clockwise, by its chords and its bulges. */
function turnsLeft(corners: readonly (Vec & { readonly bulge: number })[]): boolean {
  const twice = corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const chord = (b.x - a.x) ** 2 + (b.y - a.y) ** 2;
    // Near enough to tell the side: a segment's area is about two thirds of chord by rise, and the rise is bulge by half the chord.
    return sum + a.x * b.y - b.x * a.y + (2 / 3) * chord * a.bulge;
  }, 0);
  return twice > 0;
}
