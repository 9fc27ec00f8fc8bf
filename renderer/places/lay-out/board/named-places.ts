import { planPoint } from '../../../../core/base/points.ts';
import { type Stations } from '../../../../core/schedules/index.ts';
import { say } from '../../../../core/text/index.ts';
import { type NamedPlace } from './snap.ts';

/** Places of the plan that have a name: the control points, the mouth, and where the runs begin and end. */
export function namedPlaces({ mouth, control, runs }: Stations): readonly NamedPlace[] {
  const [a, b, c] = [control.a, control.b, control.c ?? null];
  return [
    { name: say('place-lay-out.named.pivot'), at: planPoint(...a) },
    { name: say('place-lay-out.named.mouth'), at: planPoint(...mouth) },
    { name: say('place-lay-out.named.control', { letter: 'B' }), at: planPoint(...b) },
    ...(c === null ? [] : [{ name: say('place-lay-out.named.control', { letter: 'C' }), at: planPoint(...c) }]),
    ...runs.filter((run) => run.length > 0).flatMap((run) => [
      { name: say('place-lay-out.named.start', { run: run.run }), at: planPoint(...run.start) },
      { name: say('place-lay-out.named.end', { run: run.run }), at: planPoint(...run.end) },
    ]),
  ];
}
