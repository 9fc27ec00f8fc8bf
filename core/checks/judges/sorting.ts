/** What follows the squeeze. */
import { say } from '../../text/index.ts';
import { judged, later, none, type Judge } from '../outcome.ts';

/** Without a squeeze pad or a sort pen there is nothing downstream to divert to. */
export const sortGate: Judge = ({ brief }) => {
  const { sortPens, squeezePad } = brief.later;
  if (sortPens > 0) return later();
  return squeezePad > 0 ? [judged(false, 0, say('where.noSortGate'))] : none();
};

/** A way back leads through a gate: with no gate in the brief there is none. */
export const returnWay: Judge = ({ brief }) => {
  const { openings, sortPens } = brief.later;
  return openings > 0 || sortPens > 0 ? later() : [judged(false, 0, say('where.noReturn'))];
};
