/** Places on a drawing that a person may choose: a piece mark, a point to set out. */
import { add, scale, sheetPoint, unitAt } from '../../core/base/points.ts';
import { inches, toDegrees } from '../../core/base/quantity.ts';
import { type Stroke } from '../../core/drafting/primitives.ts';
import { baseline } from '../../core/writers/baseline.ts';
import { type DrawnSheet, type LetterSizes } from '../worker/protocol.ts';

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

/** The part of a text from one letter to another as a text of its own; null where a letter's width is not known. */
function partOf(text: Text, from: number, to: number, font: LetterSizes): Text | null {
  const widths = [...text.text.slice(0, to)].map((letter) => font.advances[letter.charCodeAt(0) - 32]);
  if (widths.some((width) => width === undefined)) return null;
  const wide = (count: number): number => (widths.slice(0, count).reduce<number>((sum, width) => sum + (width ?? 0), 0) * text.height) / font.capHeight;
  const start = add(baseline(text).from, scale(unitAt(text.rotation), wide(from)));
  return { ...text, text: text.text.slice(from, to), at: sheetPoint(start.x, start.y), anchor: 'start', width: inches(wide(to) - wide(from)) };
}

/** What may stand between the marks of a list: `left: C1 P1; right: P1`. */
const BETWEEN = /^(?:\p{L}+:|[\s,;])*$/u;

/** Every word of a text that is a piece mark, where the text is a mark or a list of marks; of the cut list, each mark with its length behind it. */
function marksIn(text: Text, known: ReadonlySet<string>, font: LetterSizes, withLength: boolean): readonly Text[] {
  const found = [...text.text.matchAll(/(?<![\w-])[A-Z][A-Z0-9-]*(?![\w-])/g)].filter((word) => known.has(word[0]));
  const measured = withLength ? found.filter((word) => /^ -?\d/.test(text.text.slice(word.index + word[0].length))) : [];
  if (measured.length > 0) return measured.flatMap((word) => partOf(text, word.index, word.index + word[0].length, font) ?? []);
  const rest = found.reduceRight((left, word) => left.slice(0, word.index) + left.slice(word.index + word[0].length), text.text);
  if (found.length === 0 || !BETWEEN.test(rest)) return [];
  return found.flatMap((word) => partOf(text, word.index, word.index + word[0].length, font) ?? []);
}

/** The cover and the stakeout have tables of no pieces, where the letter of a revision or of a control point may look like a mark. */
const NO_PIECES = /^[02]/;

/** On the cut list a piece stands in its bar as `R12 22'-10 7/8"`. */
const CUT_LIST = /^14\d\d$/;

/**
 * Every piece mark on a drawing: those on leaders (a numbered bubble stands for the mark in its table) and those that stand alone or
 * in a list in a table's cell.
 */
export function markSpots({ sheet, marks, font }: DrawnSheet): readonly Spot[] {
  const known = new Set(Object.values(marks));
  return sheet.primitives.flatMap((item, index): readonly Spot[] => {
    const spot = (text: Text, mark: string, at = 0): Spot => textSpot(text, sheet.paper.height, `${String(index)} ${String(at)} ${mark}`, mark, mark);
    if (item.kind === 'text') return NO_PIECES.test(sheet.number) ? [] : marksIn(item, known, font, CUT_LIST.test(sheet.number)).map((part, at) => spot(part, part.text, at));
    if (item.kind !== 'callout') return [];
    const mark = item.pieces.map((piece) => marks[piece]).find((one) => one !== undefined);
    const text = item.strokes.find((stroke) => stroke.kind === 'text');
    return mark === undefined || text === undefined ? [] : [spot(text, mark)];
  });
}

/** Strokes that are the outline of a piece with this mark. */
export const strokesOfMark = ({ sheet, marks }: Pick<DrawnSheet, 'sheet' | 'marks'>, mark: string): readonly Stroke[] =>
  sheet.primitives.filter((item): item is Stroke => 'piece' in item && item.piece !== undefined && marks[item.piece] === mark);
