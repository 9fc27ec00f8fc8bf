import { say } from '../text/index.ts';

/** Bays of a fence in words, by the first and the last. */
export const sayBays = (from: number, to: number): string => say(from === to ? 'drawings.bays.one' : 'drawings.bays.more', { from, to });
