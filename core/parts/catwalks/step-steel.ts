/** Steps up to a deck: two stringers, treads between them, and rails beside a flight of four risers or more. */
import { add, scale, unitAt, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, radians } from '../../base/quantity.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Catwalk, type StepFlight } from '../../layout/index.ts';
import { type EndCut } from '../types.ts';
import { rectangleOf, SQUARE, type Maker, type Seat } from './own.ts';

const { steps } = CATWALK_PRACTICE;

export function stepSteel({ guarded }: Catwalk, flight: StepFlight, make: Maker): void {
  const { risers, riser, tread, angle, width, at, height } = flight;
  if (risers < 2) return;
  const where = { run: flight.run, side: flight.side, bay: flight.bay };
  const seat = (side: readonly Vec[], from: number, to: number): Seat => {
    const [x0, x1] = [Math.min(...side.map(({ x }) => x)), Math.max(...side.map(({ x }) => x))];
    const heights = side.map(({ y }) => y);
    return { plan: onPlan(flight, x0, x1, from, to), roll: [], low: inches(Math.min(...heights)), high: inches(Math.max(...heights)), flight: { at, side } };
  };
  const { across, along } = steps.stringerSize;
  const [sin, cos, tan] = [Math.sin(angle), Math.cos(angle), Math.tan(angle)];
  // Its upper edge runs through the nosings; plumb at the deck, level on the ground.
  const stringer = [{ x: 0, y: height }, { x: 0, y: height - along / cos }, { x: (height - along / cos) / tan, y: 0 }, { x: height / tan, y: 0 }];
  const long = height / sin;
  const ends: readonly [EndCut, EndCut] = [{ kind: 'slope-mitre', angle }, { kind: 'slope-mitre', angle: radians(Math.PI / 2 - angle) }];
  for (const from of [0, width - across]) make.bar(where, 'step', 'stringer', steps.stringer, { long, short: long - along * (tan + 1 / tan) }, ends, seat(stringer, from, from + across));
  for (let i = 1; i < risers; i++) {
    const top = height - i * riser;
    make.plate(where, 'step', 'tread', steps.tread.plate, { long: width - 2 * across, high: tread },
      seat(rectangleOf((i - 1) * tread, i * tread, top - steps.tread.thickness, top), across, width - across));
  }
  if (risers < steps.railFrom) return;
  stepRails(flight, guarded, (from, kind, lengths, cuts, side) => {
    const name = kind === 'step-post' ? steps.railPost : steps.rail;
    make.bar(where, 'step', kind, name, lengths, cuts, seat(side, from, from + gateSection(name).across));
  });
}

type Make = (from: number, kind: 'step-post' | 'step-rail', lengths: { readonly long: number; readonly short?: number }, cuts: readonly [EndCut, EndCut], side: readonly Vec[]) => void;

/** On either side two rails that follow the nosings, on a post at the lowest tread and one at the deck, where no guard's post stands. */
function stepRails({ risers, riser, tread, angle, width, height }: StepFlight, guarded: boolean, make: Make): void {
  const post = gateSection(steps.railPost).across;
  const rail = gateSection(steps.rail).across;
  const cos = Math.cos(angle);
  const run = (risers - 1) * tread;
  const drop = (risers - 1) * riser;
  const cut: EndCut = { kind: 'slope-mitre', angle };
  const under = steps.railHeight - rail / cos;
  for (const from of [0, width - post]) {
    for (const x of guarded ? [run] : [0, run]) {
      const foot = height - (x / tread) * riser;
      const skew = (post / 2) * Math.tan(angle);
      make(from, 'step-post', { long: under + skew, short: under - skew }, [SQUARE, cut], [
        { x: x - post / 2, y: foot }, { x: x + post / 2, y: foot }, { x: x + post / 2, y: foot + under - skew }, { x: x - post / 2, y: foot + under + skew },
      ]);
    }
    for (const over of [steps.railHeight, steps.railHeight / 2]) {
      const up = rail / cos;
      make(from, 'step-rail', { long: Math.hypot(run, drop) }, [SQUARE, SQUARE], [
        { x: 0, y: height + over - up }, { x: run, y: height - drop + over - up }, { x: run, y: height - drop + over }, { x: 0, y: height + over },
      ]);
    }
  }
}

/** A rectangle of a flight on the plan: out from the deck's edge, and across from its one side. */
function onPlan({ top, heading, width }: StepFlight, x0: number, x1: number, from: number, to: number): readonly PlanPoint[] {
  const out = unitAt(heading);
  const across = { x: -out.y, y: out.x };
  const at = (x: number, y: number): PlanPoint => add(top, add(scale(out, x), scale(across, y - width / 2))) as PlanPoint;
  return [at(x0, from), at(x1, from), at(x1, to), at(x0, to)];
}
