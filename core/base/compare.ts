/**
 * Whether two figures agree within an absolute tolerance. NaN agrees with nothing, itself included; an infinity only with itself.
 * A negative or NaN tolerance is a programmer's mistake and throws.
 */
export function near(a: number, b: number, tolerance: number): boolean {
  if (!(tolerance >= 0)) throw new Error(`tolerance must be 0 or more: ${String(tolerance)}`);
  if (a === b) return true;
  return Math.abs(a - b) <= tolerance;
}

/** Whether two lists have one length and agree figure by figure. */
export function allNear(a: readonly number[], b: readonly number[], tolerance: number): boolean {
  return a.length === b.length && a.every((value, index) => near(value, b[index] ?? NaN, tolerance));
}
