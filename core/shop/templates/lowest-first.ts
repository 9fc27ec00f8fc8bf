/** Marks as a person counts them: by letters, then by number, so that R2 stands before R10. */
export function lowestFirst(a: string, b: string): number {
  const [one, two] = [split(a), split(b)];
  if (one.letters !== two.letters) return one.letters < two.letters ? -1 : 1;
  return one.number - two.number || (a < b ? -1 : a > b ? 1 : 0);
}

function split(mark: string): { readonly letters: string; readonly number: number } {
  const [, letters = '', digits = ''] = /^([A-Z-]*)(\d*)/.exec(mark) ?? [];
  return { letters, number: digits === '' ? -1 : Number(digits) };
}
