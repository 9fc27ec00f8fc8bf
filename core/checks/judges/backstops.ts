/** Backstops over the chute: where the first stands, how it is held, how many there are. */
import { type Backstop } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Context } from '../context.ts';
import { judged, none, type Judge } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed } from '../words/print.ts';

/** In the order of the walk. */
export const backstopsOf = ({ layout }: Context): readonly Backstop[] =>
  layout.openings.filter((one) => one.kind === 'backstop').toSorted((a, b) => a.station - b.station);

export const firstBackstop: Judge = (context) => {
  const [first] = backstopsOf(context);
  if (first === undefined) return none();
  const where = say('where.backstopAt', { opening: first.path, station: printed(context.brief, first.station) });
  return [judged(meets(rules['first-backstop'].limit, first.station), first.station, where, first.at)];
};

const HELD = { rope: 'where.backstopHeld', pin: 'where.backstopPin', none: 'where.backstopNone' } as const;

/** A rope works it from a distance; a pin has to be gone to. */
export const firstBackstopHeld: Judge = (context) => {
  const [first] = backstopsOf(context);
  if (first === undefined) return none();
  return [judged(first.held === 'rope', null, say(HELD[first.held], { opening: first.path }), first.at)];
};

/** Measured: inches of chute for each backstop. */
export const backstopCount: Judge = (context) => {
  const { brief, chute } = context;
  const all = backstopsOf(context);
  const [first] = all;
  if (first === undefined) return none();
  const length = chute.reduce((sum, run) => sum + run.length, 0);
  const { most, each } = rules['backstop-count'].limit.values;
  const share = length / all.length;
  const where = say('where.backstopCount', { count: all.length, length: printed(brief, length), each: printed(brief, share) });
  return [judged(meets({ is: 'least', value: each / most }, share), share, where, first.at)];
};
