import { z } from 'zod';
import { type FaultCode } from '../path-fault.ts';
import { type Leaf, noteLeaf } from './what.ts';

z.config({ jitless: true });

/** What a reader of one value came to: the value, or the code of a fault with its words. */
export type Verdict<T> =
  | { readonly value: T }
  | { readonly fault: FaultCode; readonly params: Readonly<Record<string, string | number>> };

export const fault = <T>(code: FaultCode, params: Readonly<Record<string, string | number>>): Verdict<T> => ({ fault: code, params });

/**
 * A schema for one value of the file. `allowed` is said where the value is missing; the rest of what can be wrong is `read`'s.
 * The value as it was written is added to the words by `issueFaults`; `what` is noted for the description of the format.
 */
export function leaf<T>(what: Leaf, allowed: () => string, read: (value: unknown) => Verdict<T>) {
  const schema = z.unknown().transform((value, context): T => {
    const verdict = value === undefined ? fault<T>('fault.missing', { allowed: allowed() }) : read(value);
    if ('value' in verdict) return verdict.value;
    context.issues.push({ code: 'custom', input: value, params: { code: verdict.fault, words: verdict.params } });
    return z.NEVER;
  });
  return noteLeaf(schema, { ...what, allowed });
}
