/** Steps for people: equal risers (29 CFR 1910.25(c), WAC 296-24-74010). Lengths in inches, angles in radians. */
import { add, angleOf, distance, scale, sub, unitAt, type PlanPoint } from '../../base/points.ts';
import { degrees, inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { type Side } from '../../brief/types.ts';
import { type DeckEnd, type DeckPart, type StepFlight } from './types.ts';

/** Steps narrower than this are none (common practice, no source); 22 in is what they should be. */
export const LEAST_STEPS = 12;

/** The angle of a flight by its riser and tread. */
export const stepAngle = (riser: number, tread: number): Radians => radians(Math.atan2(riser, tread));

/** Risers, riser and tread of a flight to a deck of this height: as few equal risers as the greatest allows. */
export function stepFigures(height: number): { readonly risers: number; readonly riser: Inches; readonly tread: Inches } {
  const { mostRiser, treads: [deep, shallow], leastAngle } = CATWALK_PRACTICE.steps;
  const risers = Math.max(1, Math.ceil((height - SAME_LENGTH) / mostRiser));
  const riser = inches(height / risers);
  return { risers, riser, tread: inches(stepAngle(riser, deep) >= degrees(leastAngle) ? deep : shallow) };
}

interface Head extends Pick<StepFlight, 'at' | 'inLine' | 'height' | 'run' | 'side' | 'bay' | 'heading' | 'width'> {
  /** The edge that it leads up to. */
  readonly edge: readonly [PlanPoint, PlanPoint];
}

/** The flight at a landing, from the middle of the landing's open edge straight out. */
export function stepFlight(at: DeckEnd, run: string, side: Side, landing: DeckPart): StepFlight {
  const [, , b, a] = landing.corners;
  // The fence lies to the other side of the open edge.
  const heading = radians(angleOf(sub(b, a)) + ((side === 'left' ? 1 : -1) * Math.PI) / 2);
  return flightFrom({
    at, inLine: false, height: landing.heights[at === 'start' ? 0 : 1], run, side, bay: landing.bay, edge: [a, b], heading,
    width: inches(Math.min(CATWALK_PRACTICE.steps.width, landing.far)),
  });
}

/** The flight at a deck's end that lies on a slope, as wide as the deck and straight on from it: that end is level across. */
export function inLineFlight(at: DeckEnd, run: string, side: Side, part: DeckPart): StepFlight {
  const [a, b, c, d] = part.corners;
  const walk = angleOf(sub(b, a));
  const height = part.heights[at === 'start' ? 0 : 1];
  return flightFrom({
    at, inLine: true, height, run, side, bay: part.bay, edge: at === 'start' ? [a, d] : [b, c], heading: radians(at === 'start' ? walk + Math.PI : walk),
    width: inches(distance(a, d)),
  });
}

function flightFrom({ edge: [a, b], heading, width, height, ...rest }: Head): StepFlight {
  const { risers, riser, tread } = stepFigures(height);
  const long = distance(a, b);
  const along = scale(sub(b, a), 1 / long);
  const top = add(a, scale(along, long / 2)) as PlanPoint;
  const length = inches((risers - 1) * tread);
  const corner = (out: number, way: 1 | -1): PlanPoint => add(add(top, scale(unitAt(heading), out)), scale(along, (way * width) / 2)) as PlanPoint;
  return {
    ...rest, height, risers, riser, tread, length, angle: stepAngle(riser, tread), width, top, heading,
    // The feet of the stringers stand a tread beyond the lowest riser.
    corners: [corner(0, -1), corner(0, 1), corner(length + (risers > 1 ? tread : 0), 1), corner(length + (risers > 1 ? tread : 0), -1)],
  };
}
