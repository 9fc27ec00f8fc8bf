import { say } from '../../text/index.ts';
import { type Judge } from '../outcome.ts';

/** No load of its own is guessed: a person gives it. */
export const footingLoad: Judge = () => [{ verdict: 'look', measured: null, where: say('where.loadUnset'), at: null }];
