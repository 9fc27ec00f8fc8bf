import { type StringKey } from '../text/index.ts';
import { showValue } from './json/show-value.ts';
import { type Fault } from './types.ts';

/** Where in the file: field names and list positions from the top. */
export type Path = readonly (string | number)[];
export type FaultCode = Extract<StringKey, `fault.${string}`>;

/** A fault whose place is still in steps, so that what is under it can be told. */
export interface PathFault {
  readonly path: Path;
  readonly code: FaultCode;
  readonly params: Readonly<Record<string, string | number>>;
}

const LONGEST_NAME = 60;

function step(part: string | number): string {
  if (typeof part === 'number') return `[${String(part)}]`;
  if (/^[A-Za-z_][A-Za-z0-9_]*$/.test(part) && part.length <= LONGEST_NAME) return `.${part}`;
  return `[${showValue(part)}]`;
}

/** A path as a person reads it: `chute.runs[2].angle`, `shop.stock["pipe 2 sch 40"][0]`; empty for the file itself. */
export const pathText = (path: Path): string => path.map(step).join('').replace(/^\./, '');

/** Whether a place is at a fault, under it or above it, so that nothing can be said of its value. */
export const touches = (fault: Path, place: Path): boolean =>
  fault.every((part, index) => index >= place.length || part === place[index]);

export const toFault = ({ path, code, params }: PathFault): Fault => ({ path: pathText(path), code, params });
