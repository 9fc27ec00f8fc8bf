/**
 * A step of the graph that is done again only when what it read of its input has changed. The fields that it reads of `input` are seen
 * as it reads them; where each still holds the very same thing, and so does every one of `more`, the result kept
 * from the last time stands. So a new title does not lay the fences out again, and no list of fields can fall behind the code.
 */
export function tracked<Input extends object, More extends readonly unknown[], Output>(
  step: (input: Input, ...more: More) => Output,
): (input: Input, ...more: More) => Output {
  let kept: { readonly reads: ReadonlyMap<PropertyKey, unknown>; readonly more: More; readonly output: Output } | null = null;
  return (input, ...more) => {
    if (kept?.more.every((value, index) => value === more[index]) === true && holds(input, kept.reads)) return kept.output;
    const reads = new Map<PropertyKey, unknown>();
    const seen = new Proxy(input, {
      get: (target, key): unknown => {
        const value: unknown = Reflect.get(target, key);
        reads.set(key, value);
        return value;
      },
      has: (target, key) => {
        reads.set(key, Reflect.get(target, key));
        return Reflect.has(target, key);
      },
      // A step that copies or lists the whole of its input has read all of it.
      ownKeys: (target) => {
        for (const key of Reflect.ownKeys(target)) reads.set(key, Reflect.get(target, key));
        return Reflect.ownKeys(target);
      },
    });
    const output = step(seen, ...more);
    kept = { reads, more, output };
    return output;
  };
}

function holds(input: object, reads: ReadonlyMap<PropertyKey, unknown>): boolean {
  for (const [key, value] of reads) {
    if (!Object.is(Reflect.get(input, key), value)) return false;
  }
  return true;
}
