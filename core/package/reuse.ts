/**
 * `next` with every part that is the same as in `previous` replaced by that very part, so that equal plain data read twice is one thing
 * and what has changed is told by reference. Neither is changed.
 */
export function reuse<T>(previous: unknown, next: T): T {
  if (Object.is(previous, next)) return next;
  if (!isPlain(previous) || !isPlain(next) || Array.isArray(previous) !== Array.isArray(next)) return next;
  const before = previous as Readonly<Record<string, unknown>>;
  const after = next as Readonly<Record<string, unknown>>;
  const keys = Object.keys(after);
  // The order of the fields counts: a list of marks in another order is written in another order.
  const names = Object.keys(before);
  let same = names.length === keys.length && keys.every((key, index) => key === names[index]);
  const out: Record<string, unknown> = {};
  for (const key of keys) {
    const value = Object.hasOwn(before, key) ? reuse(before[key], after[key]) : after[key];
    if (!Object.is(value, before[key])) same = false;
    Object.defineProperty(out, key, { value, enumerable: true, writable: true, configurable: true });
  }
  if (same) return previous as T;
  return (Array.isArray(next) ? keys.map((key) => out[key]) : out) as T;
}

const isPlain = (value: unknown): value is object => {
  if (typeof value !== 'object' || value === null) return false;
  const kind: unknown = Object.getPrototypeOf(value);
  return kind === Object.prototype || kind === Array.prototype || kind === null;
};
