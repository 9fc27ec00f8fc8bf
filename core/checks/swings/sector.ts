/** The ground that a swinging leaf takes: a sector of a circle. */
import { positiveAngle } from '../../base/angle.ts';
import { crossings } from '../../base/crossing.ts';
import { type Curve } from '../../base/curve.ts';
import { add, angleOf, scale, sub, unitAt, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';

export interface Sector {
  readonly pin: PlanPoint;
  readonly reach: number;
  readonly from: number;
  /** Signed. */
  readonly turn: number;
}

/** Its arc and the two radii between which it lies. */
export function outline({ pin, reach, from, turn }: Sector): readonly Curve<PlanPoint>[] {
  const tip = (angle: number): PlanPoint => add(pin, scale(unitAt(angle), reach)) as PlanPoint;
  return [
    { kind: 'arc', center: pin, radius: inches(reach), start: radians(from), sweep: radians(turn) },
    { kind: 'line', a: pin, b: tip(from) },
    { kind: 'line', a: pin, b: tip(from + turn) },
  ];
}

/** Whether a point lies in a sector, its edges included. */
export function holds({ pin, reach, from, turn }: Sector, point: Vec): boolean {
  const to = sub(point, pin);
  if (Math.hypot(to.x, to.y) > reach + SAME_LENGTH) return false;
  return positiveAngle((angleOf(to) - from) * Math.sign(turn)) <= Math.abs(turn);
}

/** A place that two sectors share, null where they stand clear of each other. */
export function sectorsMeet(a: Sector, b: Sector): Vec | null {
  for (const one of outline(a)) {
    for (const other of outline(b)) {
      const [place] = crossings(one, other);
      if (place !== undefined) return place;
    }
  }
  const middle = ({ pin, reach, from, turn }: Sector): Vec => add(pin, scale(unitAt(from + turn / 2), reach / 2));
  if (holds(a, middle(b))) return middle(b);
  return holds(b, middle(a)) ? middle(a) : null;
}

/** The first place where a face reaches into a sector; null where it stays clear. */
export function faceMeets(sector: Sector, face: Curve<PlanPoint>): Vec | null {
  for (const edge of outline(sector)) {
    const [place] = crossings(edge, face);
    if (place !== undefined) return place;
  }
  const end: Vec = face.kind === 'line' ? face.a : add(face.center, scale(unitAt(face.start), face.radius));
  return holds(sector, end) ? end : null;
}
