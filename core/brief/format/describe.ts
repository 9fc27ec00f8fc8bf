import { z } from 'zod';
import { isAskedFor } from '../missing-faults.ts';
import { countOf, leafOf } from '../schema/what.ts';
import { type Field, type Group, type What } from './types.ts';

/** A schema without what stands around it: whether it may be left out, whether null is allowed. */
interface Bare {
  readonly schema: z.ZodType;
  readonly optional: boolean;
  readonly nullable: boolean;
}

function bare(schema: z.ZodType, optional = false, nullable = false): Bare {
  if (schema instanceof z.ZodOptional) return bare(schema.unwrap() as z.ZodType, true, nullable);
  if (schema instanceof z.ZodNullable) return bare(schema.unwrap() as z.ZodType, optional, true);
  return { schema, optional, nullable };
}

const inner = (around: string, name: string): string => (around === '' ? name : `${around}.${name}`);

function describeGroup(schema: z.ZodObject, pattern: string): Group {
  const fields = Object.entries(schema.shape).map(([name, field]) => [name, describe(field, inner(pattern, name))] as const);
  return { kind: 'group', fields: Object.fromEntries(fields) };
}

/** The groups of a union by the word that tells them apart; that word's own field becomes a choice of all of them. */
function describeForms(schema: z.ZodDiscriminatedUnion, pattern: string): What {
  const by = schema.def.discriminator;
  const groups = schema.options.map((option) => {
    if (!(option instanceof z.ZodObject)) throw new Error(`${pattern} is one of what is no group`);
    const word = (option.shape as Readonly<Record<string, z.ZodType>>)[by];
    if (!(word instanceof z.ZodLiteral)) throw new Error(`${pattern} has no word in ${by}`);
    return [String(word.value), option] as const;
  });
  const choices = groups.map(([word]) => word);
  const chosen: Field = {
    pattern: inner(pattern, by), what: { kind: 'choice', choices, allowed: choices.join(', ') }, asked: 'here', nullable: false,
  };
  const forms = groups.map(([word, option]) => {
    const others = Object.entries(option.shape as Readonly<Record<string, z.ZodType>>).filter(([name]) => name !== by);
    const fields = others.map(([name, field]) => [name, describe(field, inner(pattern, name))] as const);
    return [word, { kind: 'group', fields: { [by]: chosen, ...Object.fromEntries(fields) } }] as const;
  });
  return { kind: 'forms', by, forms: Object.fromEntries(forms) };
}

function describeBare(schema: z.ZodType, pattern: string): What {
  const leaf = leafOf(schema);
  if (leaf !== undefined) return { ...leaf, allowed: leaf.allowed() };
  if (schema instanceof z.ZodObject) return describeGroup(schema, pattern);
  if (schema instanceof z.ZodDiscriminatedUnion) return describeForms(schema, pattern);
  if (schema instanceof z.ZodArray) {
    const count = countOf(schema);
    if (count === undefined) throw new Error(`${pattern} is a list of nobody knows how many`);
    const { least, greatest } = count;
    return { kind: 'list', entry: describe(schema.element as z.ZodType, `${pattern}[]`), least, greatest };
  }
  if (schema instanceof z.ZodRecord) return { kind: 'named', entry: describe(schema.valueType as z.ZodType, `${pattern}[*]`) };
  // What is transformed behind a leaf: an angle, a time.
  if (schema instanceof z.ZodPipe) return describeBare(schema.in as z.ZodType, pattern);
  if (schema instanceof z.ZodUnknown) return { kind: 'fixed' };
  throw new Error(`nothing says what ${pattern} is`);
}

/** What a schema reads at a place. Throws for a schema that says nothing of itself: a programmer's mistake. */
export function describe(schema: z.ZodType, pattern: string): Field {
  const { schema: inside, optional, nullable } = bare(schema);
  const what = describeBare(inside, pattern);
  const always = what.kind === 'fixed' || isAskedFor(pattern);
  return { pattern, what, asked: always ? 'always' : optional || pattern === '' ? 'never' : 'here', nullable };
}
