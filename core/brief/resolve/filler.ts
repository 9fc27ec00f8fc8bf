import { degrees, inches, type Inches, type Radians } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printAngle, type LengthUnits } from '../../units/index.ts';
import { type DefaultUsed } from '../types.ts';
import { printExactly } from './print-exactly.ts';

/** Fills in what a project leaves out, and keeps the list of it. */
export interface Filler {
  readonly units: LengthUnits;
  readonly used: DefaultUsed[];
  /** Notes a default by its path and its figure in words. */
  note(path: string, value: string): void;
  length(path: string, given: Inches | undefined, fallback: number): Inches;
  /** `fallback` in degrees. */
  angle(path: string, given: Radians | undefined, fallback: number): Radians;
  number(path: string, given: number | undefined, fallback: number): number;
  word<T extends string>(path: string, given: T | undefined, fallback: T): T;
  flag(path: string, given: boolean | undefined, fallback: boolean): boolean;
  /** Null where nothing was said, noted as unset. */
  unset<T>(path: string, given: T | undefined): T | null;
}

export function createFiller(units: LengthUnits): Filler {
  const used: DefaultUsed[] = [];
  const note = (path: string, value: string): void => {
    used.push({ path, value });
  };
  function fill<T>(path: string, given: T | undefined, fallback: T, print: (value: T) => string): T {
    if (given !== undefined) return given;
    note(path, print(fallback));
    return fallback;
  }
  return {
    units,
    used,
    note,
    length: (path, given, fallback) => fill(path, given, inches(fallback), (value) => printExactly(value, units)),
    angle: (path, given, fallback) => fill(path, given, degrees(fallback), (value) => printAngle(value)),
    number: (path, given, fallback) => fill(path, given, fallback, String),
    word: (path, given, fallback) => fill(path, given, fallback, (value) => (value === '' ? say('term.empty') : value)),
    flag: (path, given, fallback) => fill(path, given, fallback, (value) => say(value ? 'term.yes' : 'term.no')),
    unset: (path, given) => fill(path, given ?? undefined, null, () => say('term.unset')),
  };
}
