/** How the single-file chute runs: its lead, its curves, its length. */
import { curvePoint } from '../../base/curve.ts';
import { type Run } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { least, meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed } from '../words/print.ts';

/** A chute without a curve is all lead. */
export const leadLength: Judge = ({ brief, layout, chute }) => {
  const curve = chute.find((run) => run.kind === 'arc');
  const lead = curve?.from ?? lengthOf(chute);
  const length = printed(brief, lead);
  const where = curve === undefined ? say('where.leadNoCurve', { length }) : say('where.lead', { length, run: curve.name });
  return [judged(meets(rules['lead-length'].limit, lead), lead, where, curve === undefined ? layout.mouth : curvePoint(curve.path, 0))];
};

export const singleTurn: Judge = ({ layout, chute }) => {
  const arcs = chute.filter((run) => run.kind === 'arc');
  const turns = arcs.filter((run, index) => index > 0 && run.hand !== arcs[index - 1]?.hand);
  const [first] = turns;
  const where = first === undefined ? say('where.noTurn') : say('where.turns', { runs: turns.map((run) => run.name).join(', ') });
  return [judged(meets(rules['single-turn'].limit, turns.length), turns.length, where, first === undefined ? layout.mouth : curvePoint(first.path, 0))];
};

export const chuteLength: Judge = ({ brief, chute, layout }) => {
  const length = lengthOf(chute);
  return [judged(meets(rules['chute-length'].limit, length), length, say('where.chuteLength', { length: printed(brief, length) }), layout.mouth)];
};

/** Each curve by itself; one that is met but under the better radius says so. */
export const chuteInsideRadius: Judge = ({ brief, chute }) => {
  const { values } = rules['chute-inside-radius'].limit;
  const curves = chute.flatMap((run): Outcome[] => {
    if (run.insideRadius === null) return [];
    const named = { run: run.name, radius: printed(brief, run.insideRadius) };
    const where = meets(least(values.better), run.insideRadius)
      ? say('where.insideRadius', named)
      : say('where.insideRadiusBetter', { ...named, better: printed(brief, values.better) });
    return [judged(meets(least(values.least), run.insideRadius), run.insideRadius, where, curvePoint(run.path, 0.5))];
  });
  return curves.length === 0 ? none() : curves;
};

const lengthOf = (chute: readonly Run[]): number => chute.reduce((sum, run) => sum + run.length, 0);
