/** Handles of the runs of the alley and the chute: the length of a straight, the inside radius and the angle of an arc. */
import { curveHeading, curvePoint } from '../../base/curve.ts';
import { angleOf, distance, sub } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout, type Run } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function runHandles(brief: Brief, layout: Layout): readonly Handle[] {
  const runs = new Map(layout.runs.map((run) => [run.name, run]));
  const of = (part: 'alley' | 'chute' | 'returnAlley', index: number): readonly Handle[] => {
    const name = `${part === 'returnAlley' ? 'return' : part}-${String(index + 1)}`;
    const run = runs.get(name);
    if (run === undefined) throw new Error(`a layout without a run ${name}`);
    // The chute is set out from its start, the alley from its end: the other end is what a hand moves.
    return handlesOf(run, `${part}.runs[${String(index)}]`, part === 'alley' ? 1 : 0);
  };
  return [...brief.alley.runs.flatMap((_, index) => of('alley', index)), ...brief.chute.runs.flatMap((_, index) => of('chute', index)), ...(brief.returnAlley?.runs ?? []).flatMap((_, index) => of('returnAlley', index))];
}

/** `still`: the fraction of the path, 0 or 1, that stands still while the run changes. */
function handlesOf(run: Run, place: string, still: 0 | 1): readonly Handle[] {
  const { path } = run;
  const moving = 1 - still;
  const grows = curveHeading(path, moving) + still * Math.PI;
  const end = { figure: 'length', run: run.name, at: curvePoint(path, moving), grows } as const;
  if (path.kind === 'line') {
    return [{
      ...end, id: `${place}.length`, path: `${place}.length`, label: say('board.handle.length', { run: run.name }),
      drag: { kind: 'along', origin: curvePoint(path, still), along: grows, factor: 1, offset: 0 },
      value: run.length, ...rangeOf('straightLength'),
    }];
  }
  const inner = run.hand === null ? null : run.faces[run.hand];
  const { insideRadius, angle } = run;
  if (inner?.kind !== 'arc' || insideRadius === null || angle === null) throw new Error(`an arc of a run without its figures: ${run.name}`);
  // The inner wall's end that stands still, and its middle, which moves straight away from there as the radius grows.
  const origin = curvePoint(inner, still);
  const middle = curvePoint(inner, 0.5);
  const away = angleOf(sub(middle, origin));
  return [
    {
      id: `${place}.insideRadius`, path: `${place}.insideRadius`, label: say('board.handle.insideRadius', { run: run.name }), figure: 'length',
      run: run.name, at: middle, grows: away,
      drag: { kind: 'along', origin, along: away, factor: insideRadius / distance(origin, middle), offset: 0 },
      value: insideRadius, ...rangeOf('insideRadius'),
    },
    {
      ...end, id: `${place}.angle`, path: `${place}.angle`, label: say('board.handle.angle', { run: run.name }), figure: 'angle',
      drag: {
        kind: 'round', center: path.center, from: still === 0 ? path.start : path.start + path.sweep,
        factor: Math.sign(path.sweep) * (still === 0 ? 1 : -1), offset: 0,
      },
      value: angle, ...rangeOf('arcAngle'),
    },
  ];
}
