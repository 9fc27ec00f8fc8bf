/** The table beside a panel: each mark once, with what the shop cuts and rolls. */
import { inches, type Inches } from '../base/quantity.ts';
import { type Column } from '../drafting/model.ts';
import { printSize } from '../drafting/kit.ts';
import { bendAngle, chord, gaugeChord, gaugeRise, rise, type Piece } from '../parts/index.ts';
import { type Section } from '../steel/index.ts';
import { say } from '../text/index.ts';
import { printAngle } from '../units/index.ts';

const start = (title: string): Column => ({ title, align: 'start' });
const end = (title: string): Column => ({ title, align: 'end' });

export interface PieceTable {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

/** Rows by mark. `rail` is the section of the fence's rails, `shopChord` the shop's gauge chord. */
export function pieceTable(units: 'in' | 'mm', pieces: readonly Piece[], rail: Section, shopChord: Inches): PieceTable {
  const first = new Map<string, Piece>();
  const count = new Map<string, number>();
  const seen = new Set<string>();
  for (const piece of pieces) {
    if (!first.has(piece.mark)) first.set(piece.mark, piece);
    if (!seen.has(piece.key)) count.set(piece.mark, (count.get(piece.mark) ?? 0) + 1);
    seen.add(piece.key);
  }
  const list = [...first.values()];
  const rolled = list.some((piece) => piece.bend !== null);
  const short = list.some((piece) => piece.lengthShort !== null);
  const size = (value: number, decimal = false): string => printSize({ units }, value, decimal);
  const columns: Column[] = [
    start(say('drawings.piece.mark')),
    start(say('drawings.piece.kind')),
    end(say('drawings.piece.quantity')),
    start(say('drawings.piece.section')),
    end(say('drawings.piece.length')),
  ];
  if (short) columns.push(end(say('drawings.piece.short')));
  if (rolled) {
    columns.push(
      end(say('drawings.piece.radius')), end(say('drawings.piece.angle')), end(say('drawings.piece.chord')), end(say('drawings.piece.rise')),
      end(say('drawings.piece.gaugeChord')), end(say('drawings.piece.gaugeRise')),
    );
  }
  const rows = list.map((piece) => {
    const tall = piece.flatHeight === null ? '' : ` x ${size(piece.flatHeight)}`;
    const cells = [piece.mark, say(`drawings.kind.${piece.kind}`), String(count.get(piece.mark)), piece.section, `${size(piece.length)}${tall}`];
    if (short) cells.push(piece.lengthShort === null ? '' : size(piece.lengthShort));
    if (!rolled) return cells;
    if (piece.bend === null) return [...cells, '', '', '', '', '', ''];
    const { radius } = piece.bend;
    const angle = bendAngle(radius, piece.length);
    const inside = radius - (piece.kind === 'rail' ? rail.across / 2 : 0);
    const gauge = gaugeChord(inches(inside), angle, shopChord);
    return [
      ...cells, size(radius, true), printAngle(angle), size(chord(radius, angle), true), size(rise(radius, angle), true),
      gauge > 0 ? size(gauge) : '', gauge > 0 ? size(gaugeRise(inside, gauge), true) : '',
    ];
  });
  return { columns, rows };
}
