/** Places on a drawing that a person may choose: a piece mark, a point to set out. */
import { toDegrees } from '../../core/base/quantity.ts';
import { type Sheet, type Stroke } from '../../core/drafting/primitives.ts';
import { baseline } from '../../core/writers/baseline.ts';

export interface Spot {
  /** Unique on the drawing. */
  readonly key: string;
  /** What is chosen with it; several spots may lead to one thing. */
  readonly id: string;
  readonly label: string;
  /** Paper inches, y down from the upper edge; turned by `turn` degrees with the clock about its corner `x`, `y`. */
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly turn: { readonly degrees: number; readonly x: number; readonly y: number };
}

/** Clear round a text, paper inches: what a fingertip or a frame around it needs. */
const PAD = 0.04;
/** How far letters reach under their baseline, of their capital's height. */
const UNDER = 0.3;

type Text = Extract<Stroke, { readonly kind: 'text' }>;

/** The spot of a text. */
export function textSpot(text: Text, paperHeight: number, key: string, id: string, label: string): Spot {
  const { from } = baseline(text);
  const x = from.x;
  const y = paperHeight - from.y;
  return {
    key, id, label,
    box: { x: x - PAD, y: y - text.height - PAD, width: text.width + 2 * PAD, height: text.height * (1 + UNDER) + 2 * PAD },
    turn: { degrees: -toDegrees(text.rotation), x, y },
  };
}

/**
 * Every piece mark on a drawing: those on leaders (a numbered bubble stands for the mark in its table) and those that stand alone in a
 * table's cell. `marks`: piece marks by the keys of the pieces.
 */
export function markSpots(sheet: Sheet, marks: Readonly<Record<string, string>>): readonly Spot[] {
  const known = new Set(Object.values(marks));
  return sheet.primitives.flatMap((item, index): Spot[] => {
    const spot = (text: Text, mark: string): Spot => textSpot(text, sheet.paper.height, `${String(index)} ${mark}`, mark, mark);
    if (item.kind === 'text') return known.has(item.text) ? [spot(item, item.text)] : [];
    if (item.kind !== 'callout') return [];
    const mark = item.pieces.map((piece) => marks[piece]).find((one) => one !== undefined);
    const text = item.strokes.find((stroke) => stroke.kind === 'text');
    return mark === undefined || text === undefined ? [] : [spot(text, mark)];
  });
}

/** Strokes that are the outline of a piece with this mark. */
export const strokesOfMark = (sheet: Sheet, marks: Readonly<Record<string, string>>, mark: string): readonly Stroke[] =>
  sheet.primitives.filter((item): item is Stroke => 'piece' in item && item.piece !== undefined && marks[item.piece] === mark);
