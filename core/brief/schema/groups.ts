import { z } from 'zod';
import { allowedRange } from '../allowed.ts';
import { type Range } from '../ranges.ts';
import { noteCount } from './what.ts';

z.config({ jitless: true });

/** A group of fields, no others allowed. The message of an unknown one lists the fields that there are; `issueFaults` words it. */
export function fields<S extends z.ZodRawShape>(shape: S) {
  const known = Object.keys(shape).join(', ');
  return z.strictObject(shape, { error: (issue) => (issue.code === 'unrecognized_keys' ? known : undefined) });
}

/** A list of so many entries. Too many or few is told beside what is wrong in the entries. */
export function list<T extends z.ZodType>(entry: T, range: Range) {
  const schema = z.array(entry).refine((entries) => entries.length >= range.least && entries.length <= range.greatest, {
    when: ({ value }) => Array.isArray(value),
    params: { code: 'fault.count', words: { allowed: allowedRange(range) } },
  });
  return noteCount(schema, range);
}

/** Entries by a name that a person chose: a section, a piece's signature. */
export const byName = <T extends z.ZodType>(entry: T) => z.record(z.string(), entry);
