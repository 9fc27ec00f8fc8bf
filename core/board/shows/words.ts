/** Names of the runs, stations of the chute, and marks of posts. */
import { markCallouts, nameCallouts, stationCallouts } from '../../drawings/plan.ts';
import { type Contributor } from './show.ts';

export const words: Contributor = ({ input, options, middle }) => {
  const { runs } = input.layout;
  const names = runs.flatMap((run) => nameCallouts(input, run, middle));
  if (options.dragged !== null) return { words: names };
  return {
    words: [
      ...names,
      ...runs.flatMap((run) => stationCallouts(input, run)),
      ...(options.marks ? markCallouts(input, new Set(runs.map((run) => run.name)), middle) : []),
    ],
  };
};
