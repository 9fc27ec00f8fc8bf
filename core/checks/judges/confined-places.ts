import { curvePoint } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout, type ManGate } from '../../layout/index.ts';

/** A place where cattle are shut in and people go after them. */
export interface ConfinedPlace {
  readonly place: string;
  readonly at: PlanPoint;
  /** Whether a gate leads out of it: one to another place with cattle in it does not. */
  readonly holds: (gate: Pick<ManGate, 'run' | 'side'>) => boolean;
}

const on = (...runs: readonly string[]): ConfinedPlace['holds'] => ({ run }) => runs.includes(run);

/**
 * Every confined place of a project, in walking order: each holding pen, the alley where a gate across it shuts it, the crowd pen with its
 * junction, the chute, the squeeze pad, each sort pen, the return alley, each ramp. What of a project is confined: common practice, no source.
 */
export function confinedPlaces(brief: Brief, layout: Layout): readonly ConfinedPlace[] {
  const named = new Map(layout.runs.map((run) => [run.name, run]));
  const middle = (name: string): PlanPoint => {
    const run = named.get(name);
    if (run === undefined) throw new Error(`no run ${name}`);
    return curvePoint(run.path, 0.5);
  };
  const alley = brief.openings.find(({ kind, run }) => kind === 'alley-gate' && /^(alley|hold)-\d+$/.test(run));
  const pens = layout.holdingPens;
  return [
    ...pens.map(({ brief: { name }, middle: at }, i): ConfinedPlace =>
      ({ place: name, at, holds: on(`${name}-back`, ...(i === 0 ? [`${name}-start`] : []), ...(i === pens.length - 1 ? [`${name}-end`] : [])) })),
    ...(alley === undefined ? [] : [{
      place: 'alley', at: middle(alley.run),
      holds: ({ run, side }: Pick<ManGate, 'run' | 'side'>) => run.startsWith('alley-') || (/^hold-\d+$/.test(run) && pens.every((pen) => pen.side !== side)),
    }]),
    { place: 'crowd-pen', at: layout.pivot, holds: on('crowd-pen', 'junction') },
    { place: 'chute', at: layout.mouth, holds: ({ run }) => run.startsWith('chute-') },
    ...(brief.squeezePad === null ? [] : [{ place: 'squeeze-pad', at: middle('squeeze-pad'), holds: on('squeeze-pad') }]),
    ...brief.sortPens.map(({ name, side }, i, all): ConfinedPlace => {
      const next = all[i + 1]?.side === side;
      const shared = i > 0 && all[i - 1]!.side === side;
      return { place: name, at: middle(name), holds: on(`${name}-back`, ...(shared ? [] : [`${name}-in`]), ...(next ? [] : [`${name}-out`])) };
    }),
    ...(brief.returnAlley === null ? [] : [{ place: 'return', at: middle('return-1'), holds: ({ run }: Pick<ManGate, 'run'>) => run.startsWith('return-') }]),
    ...layout.ramps.map(({ name, at }): ConfinedPlace => ({ place: name, at, holds: on(name) })),
  ];
}
