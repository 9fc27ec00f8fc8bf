/**
 * A value as JSON: keys in the order given, two spaces a level, a newline at the end. Figures are written in full (a double's
 * shortest form that reads back the same), never `-0`.
 * Throws on a figure that is not finite, which JSON would turn into null, naming its key.
 */
export function writeJson(value: unknown): string {
  const text = JSON.stringify(value, (key, item: unknown) => {
    if (typeof item === 'number' && !Number.isFinite(item)) throw new Error(`${key || 'value'} is not finite: ${String(item)}`);
    return Object.is(item, -0) ? 0 : item;
  }, 2) as string | undefined;
  if (text === undefined) throw new Error(`no JSON for a value of type ${typeof value}`);
  return `${text}\n`;
}
