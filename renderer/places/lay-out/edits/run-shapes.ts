/** A run as another kind of run, with figures that leave its length about as it is. */
import { isJsonObject, type Json } from '../../../../core/brief/json/types.ts';
import { RANGES } from '../../../../core/brief/index.ts';
import { inches, MM_PER_INCH, radians, toDegrees } from '../../../../core/base/quantity.ts';
import { type StationRun } from '../../../../core/schedules/index.ts';
import { type Units } from '../../../worker/protocol.ts';
import { writtenLength } from '../figures.ts';

/** To begin with: one that a sheet of plywood's length and more makes up, and a bend that cattle follow. A person changes both. */
const FIRST_LENGTH = { in: 120, mm: 3000 / MM_PER_INCH } as const;
const FIRST_RADIUS = { in: 192, mm: 5000 / MM_PER_INCH } as const;

export const firstStraight = (units: Units): Json => ({ kind: 'straight', length: writtenLength(FIRST_LENGTH[units], units) });

const within = (range: { readonly least: number; readonly greatest: number }, value: number): number => Math.min(range.greatest, Math.max(range.least, value));

/** An arc about as long as the run is along its centerline. `before`: the runs of its part, of which the nearest arc before it gives the other hand. */
export function asArc(run: StationRun, width: number, units: Units, before: readonly Json[]): Json {
  const insideRadius = FIRST_RADIUS[units];
  const angle = within(RANGES.arcAngle, Math.round(toDegrees(radians(run.length / (insideRadius + width / 2)))));
  const last = before.findLast((one) => isJsonObject(one) && one['kind'] === 'arc');
  const hand = isJsonObject(last) && last['hand'] === 'right' ? 'left' : 'right';
  return { kind: 'arc', insideRadius: writtenLength(insideRadius, units), angle, hand };
}

/** A straight as long as the run's centerline, to a whole inch or 10 mm. */
export function asStraight(run: StationRun, units: Units): Json {
  const step = units === 'in' ? 1 : 10 / MM_PER_INCH;
  return { kind: 'straight', length: writtenLength(inches(within(RANGES.straightLength, Math.round(run.length / step) * step)), units) };
}
