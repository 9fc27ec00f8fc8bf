/** What a drafting step works with: the font, the letter height and what follows from it, and how figures are printed. */
import { type Inches, type Radians, inches } from '../base/quantity.ts';
import { type SheetPoint } from '../base/points.ts';
import { TEXT_CLEAR } from '../base/tolerance.ts';
import { printLength } from '../units/index.ts';
import { type Font, textWidth } from './font.ts';
import { type TurnedBox, textBox } from './boxes.ts';
import { type LayerName, type Paper, type Pen, type Stroke } from './primitives.ts';

export type TextStroke = Extract<Stroke, { kind: 'text' }>;

export interface Kit {
  readonly font: Font;
  readonly units: 'in' | 'mm';
  /** Letter height on this paper. */
  readonly h: number;
  /** How far a line of text reaches above and below its baseline, by the font. */
  readonly up: number;
  readonly down: number;
  /** Clear paper round a text: the contract's and a little for the width of a line. */
  readonly clear: number;
  readonly arrow: number;
  /** From a witness point to its extension line, and how far that runs past the dimension line. */
  readonly gap: number;
  readonly past: number;
  /** Distance from one line of text to the next. */
  readonly pitch: number;
}

export function makeKit(font: Font, units: 'in' | 'mm', paper: Paper): Kit {
  const h = paper.text;
  const em = h / font.capHeight;
  const up = font.ascent * em;
  const down = -font.descent * em;
  const clear = TEXT_CLEAR + 0.012;
  return { font, units, h, up, down, clear, arrow: 1.2 * h, gap: 0.6 * h, past: 0.8 * h, pitch: up + down + 2 * clear };
}

export const measureText = (kit: Kit, text: string): Inches => textWidth(kit.font, text, kit.h);

export function makeText(
  kit: Kit,
  layer: LayerName,
  text: string,
  at: SheetPoint,
  anchor: TextStroke['anchor'],
  rotation: Radians | 0 = 0,
): TextStroke {
  return { kind: 'text', layer, text, at, anchor, height: inches(kit.h), rotation: rotation as Radians, width: measureText(kit, text) };
}

/** The paper that a text needs: its box and the clear round it. */
export const boxOf = (kit: Kit, text: TextStroke): TurnedBox => textBox(kit.font, text, kit.clear);

/** A length as it is printed on a drawing; `decimal` adds the figure in brackets for bends and plates. */
export const printSize = (kit: Pick<Kit, 'units'>, value: number, decimal = false): string =>
  printLength(inches(value), kit.units, decimal ? 'bracket' : 'feet', false);

export const PENS = {
  outline: { layer: 'STEEL', weight: 'thick', dash: 'solid' },
  thin: { layer: 'STEEL', weight: 'thin', dash: 'solid' },
  hidden: { layer: 'HIDDEN', weight: 'thin', dash: 'hidden' },
  center: { layer: 'CENTER', weight: 'thin', dash: 'center' },
  size: { layer: 'SIZES', weight: 'thin', dash: 'solid' },
  mark: { layer: 'MARKS', weight: 'thin', dash: 'solid' },
  note: { layer: 'NOTES', weight: 'thin', dash: 'solid' },
  frame: { layer: 'FRAME', weight: 'thick', dash: 'solid' },
  rule: { layer: 'FRAME', weight: 'thin', dash: 'solid' },
} as const satisfies Record<string, Pen>;
