/** One piece of a catwalk before it has a mark: what its drafts have in common. */
import { type Vec } from '../../base/points.ts';
import { inches, pounds } from '../../base/quantity.ts';
import { gateFlat, gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Side } from '../../brief/types.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { pieceKey, type DraftPiece } from '../draft-piece.ts';
import { type CatwalkPart, type CatwalkPlace, type EndCut, type PieceKind } from '../types.ts';

export interface Where {
  readonly run: string;
  readonly side: Side;
  readonly bay: number;
}
/** What of a piece's place its maker says. */
export type Seat = Omit<CatwalkPlace, 'kind' | 'catwalk' | 'part' | 'flight' | 'end' | 'over' | 'leaning'> & Partial<Pick<CatwalkPlace, 'flight' | 'end' | 'over' | 'leaning'>>;

/** Makes drafts for one project: its keys count on where two catwalks share a bay. */
export interface Maker {
  readonly bar: (where: Where, kind: PieceKind, part: CatwalkPart, section: string, lengths: { readonly long: number; readonly short?: number }, ends: readonly [EndCut, EndCut], seat: Seat) => void;
  readonly plate: (where: Where, kind: PieceKind, part: CatwalkPart, sheet: string, size: { readonly long: number; readonly high: number; readonly area?: number; readonly flat?: FlatShape }, seat: Seat) => void;
}

export const SQUARE: EndCut = { kind: 'square' };

/** Pieces of one kind in one bay, whose keys count on. */
export const keyGroup = (kind: PieceKind, run: string, side: Side, bay: number): string => `${kind} ${run} ${side} ${String(bay)}`;

/** Collects the pieces of one catwalk into `into`; `counts` is shared by all of a project. */
export function makerOf(catwalk: string, counts: Map<string, number>, into: DraftPiece[]): Maker {
  const add = (where: Where, kind: PieceKind, part: CatwalkPart, seat: Seat, rest: Pick<DraftPiece, 'section' | 'length' | 'lengthShort' | 'flatHeight' | 'weight' | 'ends' | 'flat'>): void => {
    const { run, side, bay } = where;
    const group = keyGroup(kind, run, side, bay);
    const row = counts.get(group) ?? 0;
    counts.set(group, row + 1);
    const { plan, low, high, roll, flight = null, end = null, over = inches(0), leaning = null } = seat;
    into.push({
      key: pieceKey(kind, run, side, bay, row), kind, ...rest, bend: null, run, side, bay, bays: 0,
      place: { kind: 'catwalk', catwalk, part, plan, low, high, over, leaning, roll, end, flight },
    });
  };
  return {
    bar: (where, kind, part, name, { long, short }, ends, seat) => {
      const section = name.startsWith('flat ') ? gateFlat(name) : gateSection(name);
      const cut = short !== undefined && ends.some((end) => end.kind !== 'square');
      add(where, kind, part, seat, {
        section: section.name, length: inches(long), lengthShort: cut ? inches(short) : null, flatHeight: null,
        weight: pounds((section.weightPerInch * (long + (cut ? short : long))) / 2), ends,
      });
    },
    plate: (where, kind, part, name, { long, high, area, flat }, seat) => {
      const sheet = gateSheet(name);
      add(where, kind, part, seat, {
        section: sheet.name, length: inches(long), lengthShort: null, flatHeight: inches(high), weight: pounds(sheet.weightPerArea * (area ?? long * high)),
        ends: [SQUARE, SQUARE], ...(flat === undefined ? {} : { flat }),
      });
    },
  };
}

export const rectangleOf = (x0: number, x1: number, y0: number, y1: number): readonly Vec[] =>
  [{ x: x0, y: y0 }, { x: x1, y: y0 }, { x: x1, y: y1 }, { x: x0, y: y1 }];
