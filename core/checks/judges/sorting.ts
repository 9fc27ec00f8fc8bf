/** What follows the squeeze. */
import { say } from '../../text/index.ts';
import { judged, later, none, type Judge } from '../outcome.ts';

/** Without a squeeze pad or a sort pen there is nothing downstream to divert to. */
export const sortGate: Judge = ({ brief }) => {
  if (brief.sortPens.length > 0) return later();
  return brief.squeezePad !== null ? [judged(false, 0, say('where.noSortGate'))] : none();
};

