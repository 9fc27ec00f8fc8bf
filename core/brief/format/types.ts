/** The project file described: what every place in it holds. Made from the schema at the door, so that the two can't differ. */
import { type Leaf } from '../schema/what.ts';

/** When the file has to say a field: always; wherever what is around it is said; or never, for it has a default or may stay unset. */
export type Asked = 'always' | 'here' | 'never';

export type What =
  | (Leaf & { readonly allowed: string })
  | { readonly kind: 'fixed' }
  | Group
  /** One of several groups, told apart by the choice that stands in the field `by`. */
  | { readonly kind: 'forms'; readonly by: string; readonly forms: Readonly<Record<string, Group>> }
  | { readonly kind: 'list'; readonly entry: Field; readonly least: number; readonly greatest: number }
  /** Entries by a name that a person chose. */
  | { readonly kind: 'named'; readonly entry: Field };

export interface Group {
  readonly kind: 'group';
  readonly fields: Readonly<Record<string, Field>>;
}

export interface Field {
  /** Where it stands, any entry of a list as `[]` and any name as `[*]`: `chute.runs[].angle`, `shop.stock[*][]`. */
  readonly pattern: string;
  readonly what: What;
  readonly asked: Asked;
  /** Whether `null` may be written, for none. */
  readonly nullable: boolean;
}
