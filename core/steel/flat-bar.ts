import { inches, type Inches } from '../base/quantity.ts';
import { parseFigure } from '../units/index.ts';
import { STEEL_DENSITY } from './density.ts';
import { tidyName } from './tidy-name.ts';

/** A flat bar, as it is bought by length. */
export interface FlatBar {
  readonly name: string;
  readonly thickness: Inches;
  readonly width: Inches;
  /** Pounds. */
  readonly weightPerInch: number;
}

/** The flat bar behind a name: `flat 1/4 x 2`, thickness then width in inches. Null for any other text. */
export function parseFlatBar(text: string): FlatBar | null {
  const name = tidyName(text);
  const match = /^flat (.+) x (.+)$/.exec(name);
  const [thickness, width] = [match?.[1], match?.[2]].map((figure) => (figure === undefined ? null : parseFigure(figure)));
  if (thickness === null || thickness === undefined || width === null || width === undefined || thickness <= 0 || width <= 0) return null;
  return { name, thickness: inches(thickness), width: inches(width), weightPerInch: thickness * width * STEEL_DENSITY };
}
