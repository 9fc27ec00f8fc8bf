import { isJsonObject, type Json } from '../../core/brief/json/types.ts';
import { pathText } from '../../core/brief/path-fault.ts';

/** A field that two states of a project have otherwise; undefined: it is not there. */
export interface Difference {
  readonly path: string;
  readonly theirs: Json | undefined;
  readonly ours: Json | undefined;
}

/** The fields in which two projects differ, in the order of the file, each as far down as it can be told. */
export function differences(theirs: Json | undefined, ours: Json | undefined, at: readonly (string | number)[] = []): readonly Difference[] {
  if (theirs === ours) return [];
  if (isJsonObject(theirs) && isJsonObject(ours)) {
    const names = [...new Set([...Object.keys(theirs), ...Object.keys(ours)])];
    return names.flatMap((name) => differences(theirs[name], ours[name], [...at, name]));
  }
  if (Array.isArray(theirs) && Array.isArray(ours) && theirs.length === ours.length) {
    const other: readonly Json[] = ours as readonly Json[];
    return (theirs as readonly Json[]).flatMap((item, index) => differences(item, other[index], [...at, index]));
  }
  return JSON.stringify(theirs) === JSON.stringify(ours) ? [] : [{ path: pathText(at), theirs, ours }];
}
