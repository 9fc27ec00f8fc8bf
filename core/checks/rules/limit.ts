import { SAME_LENGTH } from '../../base/tolerance.ts';
import { say, type StringKey } from '../../text/index.ts';

/** A limit of the rules: the figures once, and the words that go with them. */
export type Limit =
  | { readonly is: 'equal'; readonly value: number }
  | { readonly is: 'least'; readonly value: number }
  | { readonly is: 'most'; readonly value: number }
  | { readonly is: 'range'; readonly low: number; readonly high: number }
  | { readonly is: 'near'; readonly by: number; readonly of: number }
  /** Words, with any figures in them; met or not as its own rule says. */
  | { readonly is: 'words'; readonly key: StringKey; readonly values: Readonly<Record<string, number>> };

export const equal = (value: number) => ({ is: 'equal', value }) as const;
export const least = (value: number) => ({ is: 'least', value }) as const;
export const most = (value: number) => ({ is: 'most', value }) as const;
export const range = (low: number, high: number) => ({ is: 'range', low, high }) as const;
export const near = (by: number, of: number) => ({ is: 'near', by, of }) as const;
/** The key's own type is kept: the union of all keys, once a row, would be more than the compiler writes out. */
export const words = <const K extends StringKey, const V extends Readonly<Record<string, number>>>(key: K, values: V) =>
  ({ is: 'words', key, values }) as const;

/** A limit as it is printed and as `findings.json` bears it. */
export function limitText(limit: Limit): string {
  switch (limit.is) {
    case 'equal': return say('limit.equal', { value: figure(limit.value) });
    case 'least': return say('limit.least', { value: figure(limit.value) });
    case 'most': return say('limit.most', { value: figure(limit.value) });
    case 'range': return say('limit.range', { low: figure(limit.low), high: figure(limit.high) });
    case 'near': return say('limit.near', { by: figure(limit.by), of: figure(limit.of) });
    case 'words': return say(limit.key, limit.values);
  }
}

/** A shop's own limit may come from millimeters: four decimals of an inch at most. */
const figure = (value: number): string => String(Number(value.toFixed(4)));

/**
 * Whether a figure in the rule's unit meets a limit of figures. A figure within rounding (SAME_LENGTH) of its limit meets it: a
 * brief in millimeters must not fail by the last bit of a double. NaN meets nothing.
 */
export function meets(limit: Exclude<Limit, { is: 'words' }>, measured: number): boolean {
  const low = (bound: number): boolean => measured >= bound - SAME_LENGTH;
  const high = (bound: number): boolean => measured <= bound + SAME_LENGTH;
  switch (limit.is) {
    case 'equal': return low(limit.value) && high(limit.value);
    case 'least': return low(limit.value);
    case 'most': return high(limit.value);
    case 'range': return low(limit.low) && high(limit.high);
    case 'near': return low(limit.of - limit.by) && high(limit.of + limit.by);
  }
}
