/** Ways out for people and for the last animal. */
import { isJambedGate, type JambedGate, type ManGate } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Context } from '../context.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed, printedSmall } from '../words/print.ts';
import { animalPass } from './animal-pass.ts';
import { confinedPlaces } from './confined-places.ts';

/** Where cattle are driven together and the last one turns on people, with the runs whose fences stand round it. */
const CONFINED = [
  { place: 'crowd-pen', holds: (run: string) => run === 'crowd-pen' || run === 'junction' },
  { place: 'chute', holds: (run: string) => run.startsWith('chute-') },
] as const;

export const manGatesOf = ({ layout }: Context): readonly ManGate[] => layout.openings.filter((one) => one.kind === 'man-gate');

const namesOf = (gates: readonly JambedGate[]): string => gates.map(({ path }) => path).join(', ');

/** Every man gate here swings to the cattle, is shut by a spring and has no latch; so each place needs one. Measured: how many it has. */
export const manGate: Judge = (context) => confinedPlaces(context.brief, context.layout).map(({ place, at, holds }): Outcome => {
  const gates = manGatesOf(context).filter(holds);
  const count = gates.length;
  const where = count === 0 ? say('where.noManGateHere', { place }) : say('where.manGates', { place, count, names: namesOf(gates) });
  return judged(count >= rules['man-gate'].limit.values.each, count, where, gates[0]?.at ?? at);
});

/** Each man gate by itself. */
export const manPass: Judge = (context) => {
  const gates = manGatesOf(context);
  if (gates.length === 0) return none();
  return gates.map(({ path, run, side, u, width, at }) => {
    const where = say('where.manGate', { opening: path, run, side, at: printed(context.brief, u), width: printedSmall(context.brief, width) });
    return judged(meets(rules['man-pass'].limit, width), width, where, at);
  });
};

/** An opening that the last animal can leave by, worked from outside: one as wide at least as a chute for its class may be. */
export const loneAnimal: Judge = (context) => CONFINED.map(({ place, holds }): Outcome => {
  const { brief, layout } = context;
  const needed = animalPass(brief);
  const gates = layout.openings.filter(isJambedGate).filter(({ run, width }) => holds(run) && meets({ is: 'least', value: needed }, width));
  const at = gates[0]?.at ?? (place === 'chute' ? layout.mouth : layout.pivot);
  const width = printedSmall(brief, needed);
  const where = gates.length === 0 ? say('where.noWayOutHere', { place, width }) : say('where.wayOutGate', { place, names: namesOf(gates), width });
  return judged(gates.length >= rules['lone-animal'].limit.values.each, gates.length, where, at);
});
