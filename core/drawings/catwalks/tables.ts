/** Tables of a catwalk: the trapezoids of its deck; everything that it is cut from. */
import { toDegrees, type Radians } from '../../base/quantity.ts';
import { type Column } from '../../drafting/model.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Catwalk } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { printAngle } from '../../units/index.ts';
import { type DeckPiece } from './shapes.ts';

export interface DeckTable {
  readonly title: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

const start = (title: string): Column => ({ title, align: 'start' });
const end = (title: string): Column => ({ title, align: 'end' });

/** Each mark of deck once: its chords, width, turn, mitre, and the radius to the post backs. */
export function deckTable(units: 'in' | 'mm', catwalk: Catwalk, pieces: readonly DeckPiece[], mark: string): DeckTable {
  const size = (value: number): string => printSize({ units }, value, true);
  const angle = (value: Radians): string => (toDegrees(value) < 1e-9 ? say('drawings.catwalk.square') : printAngle(value));
  const decks = pieces.filter(({ place }) => place.part === 'deck');
  const parts = catwalk.stretches.flatMap((stretch) => stretch.parts.map((part) => ({ part, stretch })));
  const rows = new Map<string, { readonly cells: readonly string[]; count: number }>();
  decks.forEach(({ piece }, i) => {
    const known = rows.get(piece.mark);
    if (known !== undefined) { known.count += 1; return; }
    const { part, stretch } = parts[i]!;
    rows.set(piece.mark, {
      count: 1,
      cells: [size(part.near), size(part.far), size(catwalk.brief.width), angle(part.angle), angle(part.mitre), stretch.backRadius === null ? say('drawings.catwalk.straight') : size(stretch.backRadius)],
    });
  });
  return {
    title: say('drawings.catwalk.parts', { mark }),
    columns: [
      start(say('drawings.piece.mark')), end(say('drawings.piece.quantity')), end(say('drawings.catwalk.near')), end(say('drawings.catwalk.far')),
      end(say('drawings.catwalk.width')), end(say('drawings.catwalk.turn')), end(say('drawings.catwalk.mitre')), end(say('drawings.catwalk.radius')),
    ],
    rows: [...rows].map(([name, { cells, count }]) => [name, String(count), ...cells]),
  };
}

/** Each mark once with what it is. */
export function steelTable(units: 'in' | 'mm', pieces: readonly DeckPiece[], mark: string): DeckTable {
  const size = (value: number | null): string => (value === null ? '' : printSize({ units }, value));
  const rows = new Map<string, { readonly one: DeckPiece; count: number }>();
  for (const one of pieces) {
    const known = rows.get(one.piece.mark);
    if (known === undefined) rows.set(one.piece.mark, { one, count: 1 });
    else known.count += 1;
  }
  return {
    title: say('drawings.catwalk.steel', { mark }),
    columns: [
      start(say('drawings.piece.mark')), start(say('drawings.piece.kind')), end(say('drawings.piece.quantity')), start(say('drawings.piece.section')),
      end(say('drawings.piece.length')), end(say('drawings.piece.short')),
    ],
    rows: [...rows.values()].map(({ one: { piece, place }, count }) => [
      piece.mark, say(`drawings.catwalk.part.${place.part}`), String(count), piece.section,
      piece.flatHeight === null ? size(piece.length) : `${size(piece.length)} x ${size(piece.flatHeight)}`, size(piece.lengthShort),
    ]),
  };
}
