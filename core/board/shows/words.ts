/** Names of the runs and stations of the chute. */
import { nameCallouts, stationCallouts } from '../../drawings/plan.ts';
import { type Contributor } from './show.ts';

export const words: Contributor = ({ input, options, middle }) => {
  const { runs } = input.layout;
  const names = runs.flatMap((run) => nameCallouts(input, run, middle));
  return { words: options.dragged === null ? [...names, ...runs.flatMap((run) => stationCallouts(input, run))] : names };
};
