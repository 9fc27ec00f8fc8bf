/** Fractions that have a character of their own, as typed on a phone or pasted from a document. */
const VULGAR: Readonly<Record<string, string>> = {
  '½': '1/2', '¼': '1/4', '¾': '3/4', '⅛': '1/8', '⅜': '3/8', '⅝': '5/8', '⅞': '7/8',
};

/** The characters that people type for foot, inch and times, and the spaces between, in one plain form. */
export function tidyFigures(text: string): string {
  return text
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/[–−]/g, '-')
    .replace(/[½¼¾⅛⅜⅝⅞]/g, (character) => ` ${VULGAR[character] ?? ''}`)
    .replace(/\s+/g, ' ')
    .trim();
}

/** A plain decimal without a sign, `12`, `12.5` or `.5`. Null for anything else. */
export function parseDecimal(text: string): number | null {
  if (!/^(\d+\.?\d*|\.\d+)$/.test(text)) return null;
  const value = Number(text);
  return Number.isFinite(value) ? value : null;
}

/**
 * A plain decimal times a power of ten, over a whole number, with one rounding only: `76.2` over 254 by 10^1 is 3 exactly, where
 * 76.2 / 25.4 in doubles is not. Null for what is not a plain decimal.
 */
export function parseRatio(text: string, power: number, over: number): number | null {
  if (parseDecimal(text) === null) return null;
  const [whole = '', decimals = ''] = text.split('.');
  const shift = power - decimals.length;
  const value = Number(`${whole}${decimals}e${String(Math.max(shift, 0))}`) / (over * 10 ** Math.max(-shift, 0));
  return Number.isFinite(value) ? value : null;
}

/**
 * A figure as the trade writes it, without sign or unit: `12`, `12.5`, `3/16`, `3 1/2`, `3-1/2`. Null for anything else;
 * a fraction behind a whole number is a proper one.
 */
export function parseFigure(text: string): number | null {
  const mixed = /^(?:(\d+)(?: |-| - ))?(\d+) ?\/ ?(\d+)$/.exec(text);
  if (mixed === null) return parseDecimal(text);
  const [, whole, top, bottom] = mixed;
  const numerator = Number(top);
  const denominator = Number(bottom);
  if (denominator === 0 || (whole !== undefined && numerator >= denominator)) return null;
  const value = Number(whole ?? 0) + numerator / denominator;
  return Number.isFinite(value) ? value : null;
}
