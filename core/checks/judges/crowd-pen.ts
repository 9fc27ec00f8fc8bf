/** The crowd pen's own measures. */
import { curvePoint } from '../../base/curve.ts';
import { toDegrees } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { judged, type Judge } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed, printedAngle, printedArea } from '../words/print.ts';
import { cattleClass } from './cattle-class.ts';

export const crowdSweep: Judge = ({ brief, pen }) => {
  const sweep = toDegrees(brief.crowdPen.sweep);
  const where = say('where.sweep', { angle: printedAngle(brief.crowdPen.sweep) });
  return [judged(meets(rules['crowd-sweep'].limit, sweep), sweep, where, curvePoint(pen.path, 0.5))];
};

export const crowdRadius: Judge = ({ brief, pen }) => {
  const { radius } = brief.crowdPen;
  const where = say('where.radius', { run: pen.name, radius: printed(brief, radius) });
  return [judged(meets(rules['crowd-radius'].limit, radius), radius, where, curvePoint(pen.path, 0.5))];
};

export const funnelAngle: Judge = ({ brief, layout }) => {
  const angle = toDegrees(brief.crowdPen.funnelAngle);
  const side = brief.crowdPen.hand;
  const face = layout.runs.find((run) => run.name === 'junction')?.faces[side] ?? null;
  const where = say('where.funnel', { side, angle: printedAngle(brief.crowdPen.funnelAngle) });
  return [judged(meets(rules['funnel-angle'].limit, angle), angle, where, face === null ? null : curvePoint(face, 0.5))];
};

/**
 * The brief names no number of head at once, so the pen says its own: as many as it holds at the least area a head. The area is the
 * sector's, R²·S/2. Measured: square feet a head when it holds that many; unmet only where it does not hold one.
 */
export const crowdArea: Judge = ({ brief, layout }) => {
  const { radius, sweep } = brief.crowdPen;
  const least = rules['crowd-area'].limit.values[cattleClass(brief)];
  const area = (radius ** 2 * sweep) / 2;
  const head = Math.floor(area / 144 / least);
  const where = say('where.crowdArea', { area: printedArea(brief, area), head });
  return [{ ...judged(head >= 1, area / 144 / Math.max(head, 1), where, layout.pivot), limit: say('limit.least', { value: least }) }];
};

/** Of the whole facility, but the fall matters where cattle turn. */
export const groundFall: Judge = ({ brief, layout }) =>
  [judged(meets(rules['ground-fall'].limit, brief.floors.fall), brief.floors.fall, say('where.fall'), layout.pivot)];
