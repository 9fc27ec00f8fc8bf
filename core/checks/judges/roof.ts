/** The roof over the squeeze pad. */
import { curvePoint } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { say } from '../../text/index.ts';
import { type Context } from '../context.ts';
import { judged, none, type Judge } from '../outcome.ts';

/** Cattle balk at a dark hole: both ends stay without cladding. */
export const roofSeeThrough: Judge = (context) => {
  const roof = context.brief.squeezePad?.roof ?? null;
  if (roof === null) return none();
  const clad = (['in', 'out'] as const).filter((end) => !roof.open.includes(end));
  const where = clad.length === 0 ? say('where.roofOpen') : say('where.roofClad', { sides: clad.map((end) => say(`where.roof.${end}`)).join(', ') });
  return [judged(clad.length === 0, null, where, padMiddle(context))];
};

/** Only reports: the share of the roof that lets daylight in. */
export const roofDaylight: Judge = (context) => {
  const roof = context.brief.squeezePad?.roof ?? null;
  if (roof === null) return none();
  return [{ verdict: 'look', measured: roof.daylight, where: say('where.roofDaylight'), at: padMiddle(context) }];
};

function padMiddle({ layout }: Context): PlanPoint | null {
  const pad = layout.runs.find(({ name }) => name === 'squeeze-pad');
  return pad === undefined ? null : curvePoint(pad.path, 0.5);
}
