import { say } from '../../text/index.ts';
import { later, type Judge } from '../outcome.ts';

/** No load is guessed: a person gives it (`footings.load`). Against one that is given, the depth is worked out by a later version. */
export const footingLoad: Judge = ({ brief }) =>
  (brief.postLoad === null ? [{ verdict: 'look', measured: null, where: say('where.loadUnset'), at: null }] : later());
