/**
 * A figure in plain decimals: at most `places` of them, trailing zeros gone, no exponent, never `-0`.
 * Throws on NaN, on an infinity and on 1e15 or more, where a double has no decimals left.
 */
export function plainNumber(value: number, places: number): string {
  const text = fixedNumber(value, places);
  return places > 0 ? text.replace(/\.?0+$/, '') : text;
}

/** The same with exactly `places` decimals. */
export function fixedNumber(value: number, places: number): string {
  if (!(Math.abs(value) < 1e15)) throw new Error(`not a figure that can be written: ${String(value)}`);
  const text = value.toFixed(places);
  return /^-[0.]+$/.test(text) ? text.slice(1) : text;
}
