import { say, type StringKey } from '../text/index.ts';
import { type Fault } from './types.ts';

/** A fault in one line, `PATH: what is wrong, what is allowed`. Throws for a code without words: a programmer's mistake. */
export function printFault(fault: Fault): string {
  const place = fault.path === '' ? say('fault-place.file') : fault.path;
  return `${place}: ${say(fault.code as StringKey, fault.params)}`;
}
