/** A finding's measure and limit as a person reads them, in the project's units. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Finding } from '../types.ts';

export interface Figures {
  /** null where the rule has no figure, or no subject in this project. */
  readonly measured: string | null;
  readonly limit: string;
}

/** A unit of the rules in a metric project, and how many of it one is. Others stay: degrees, what a law says in millimeters, ratios. */
const METRIC: Readonly<Record<string, { readonly unit: string; readonly per: number; readonly places: (value: number) => number }>> = {
  in: { unit: 'mm', per: MM_PER_INCH, places: (value) => (value < 10 ? 2 : 1) },
  ft2: { unit: 'm2', per: (12 * MM_PER_INCH / 1000) ** 2, places: () => 2 },
};

/** A figure of a limit; a count, as in `1 each 240`, is none that a unit changes. */
const FIGURE = /\d+(?:\.\d+)?(?! each)(?![\d.])/g;

/** Decimals of a measure in the rule's own unit: more than any of the limits has. */
const PLACES = 3;

/** Measure and limit of a finding, finer than a drawing prints its sizes, for a sixteenth may be what a limit is missed by. */
export function printFigures({ measured, limit, unit }: Pick<Finding, 'measured' | 'limit' | 'unit'>, units: 'in' | 'mm'): Figures {
  const metric = units === 'mm' && Object.hasOwn(METRIC, unit) ? METRIC[unit] : undefined;
  const shown = metric?.unit ?? unit;
  const turned = (value: number): string => (metric === undefined ? short(value, PLACES) : short(value * metric.per, metric.places(value * metric.per)));
  const bound = metric === undefined ? limit : limit.replace(FIGURE, (text) => turned(Number(text)));
  return {
    measured: measured === null ? null : withUnit(turned(measured), shown),
    limit: withUnit(bound, shown),
  };
}

/** The unit behind the last figure; a limit that is a word alone, such as "report", has none. */
const withUnit = (text: string, unit: string): string => (unit === '' ? text : text.replace(/(.*\d)/, `$1 ${unit}`));

/** At most so many decimals, trailing zeros left off, never a negative zero. */
const short = (value: number, places: number): string => String(Number(value.toFixed(places)) + 0);
