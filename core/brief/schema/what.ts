import { type z } from 'zod';
import { type Range } from '../ranges.ts';

/** What one value of the file is: how it is written, what its figure may be, what it may be chosen from. */
export type Leaf =
  | { readonly kind: 'length' | 'angle' | 'weight' | 'number' | 'whole'; readonly range: Range }
  /** A text of so many characters. */
  | { readonly kind: 'text'; readonly range: Range }
  | { readonly kind: 'choice'; readonly choices: readonly string[] }
  /** One of the names, or a figure. */
  | { readonly kind: 'soil'; readonly choices: readonly string[]; readonly range: Range }
  | { readonly kind: 'flag' | 'date' | 'time' | 'zone' | 'letter' | 'mark' | 'section' | 'sheet' | 'custom-section' };

export type Written = Leaf & {
  /** What is allowed, in the words of a fault. */
  readonly allowed: () => string;
};

const leaves = new WeakMap<z.ZodType, Written>();
const counts = new WeakMap<z.ZodType, Range>();

/** Notes beside a schema what it reads, so that the format can be described from the schema itself. Returns the schema. */
export function noteLeaf<S extends z.ZodType>(schema: S, written: Written): S {
  leaves.set(schema, written);
  return schema;
}

/** Notes beside the schema of a list how many entries it takes. Returns the schema. */
export function noteCount<S extends z.ZodType>(schema: S, range: Range): S {
  counts.set(schema, range);
  return schema;
}

export const leafOf = (schema: z.ZodType): Written | undefined => leaves.get(schema);
export const countOf = (schema: z.ZodType): Range | undefined => counts.get(schema);
