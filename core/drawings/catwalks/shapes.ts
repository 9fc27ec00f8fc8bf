/** Outlines of a catwalk's pieces in its views, each with its piece's key. */
import { type Vec, viewPoint } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../../drafting/model.ts';
import { type Catwalk, type Layout } from '../../layout/index.ts';
import { type Parts, type Piece } from '../../parts/index.ts';
import { outline } from '../ramps/shapes.ts';

/** A piece of a catwalk with its place. */
export interface DeckPiece {
  readonly piece: Piece;
  readonly place: Extract<Piece['place'], { kind: 'catwalk' }>;
}

export const piecesOf = (parts: Parts, { path }: Catwalk): readonly DeckPiece[] =>
  parts.pieces.flatMap((piece) => (piece.place.kind === 'catwalk' && piece.place.catwalk === path ? [{ piece, place: piece.place }] : []));

/** What a catwalk is called on drawings and in lists: CW1 … in the order of the brief. */
export const catwalkMark = (layout: Layout, catwalk: Catwalk): string => `CW${String(layout.catwalks.indexOf(catwalk) + 1)}`;

/** Decks and steps from above, as they lie in the plan. */
export function deckPlanShapes(layout: Layout, runs: ReadonlySet<string>): Shape[] {
  return layout.catwalks.flatMap((catwalk) => [
    ...catwalk.stretches.filter(({ run }) => runs.has(run)).flatMap(({ parts }) => parts.flatMap(({ corners }) => outline(PENS.thin, corners))),
    ...catwalk.flights.filter(({ run, length }) => runs.has(run) && length > 0).flatMap((flight) => stepLines(flight)),
  ]);
}

/** The outline of a flight and its nosings. */
export function stepLines({ corners: [a, b, c, d], risers }: Catwalk['flights'][number]): Shape[] {
  const at = (p: Vec, q: Vec, share: number): Vec => ({ x: p.x + (q.x - p.x) * share, y: p.y + (q.y - p.y) * share });
  const nosings = Array.from({ length: risers - 1 }, (_, i) => (i + 1) / risers);
  return [
    ...outline(PENS.thin, [a, b, c, d]),
    ...nosings.map((share): Shape => {
      const [p, q] = [at(a, d, share), at(b, c, share)];
      return { kind: 'curve', pen: PENS.thin, curve: { kind: 'line', a: viewPoint(p.x, p.y), b: viewPoint(q.x, q.y) } };
    }),
  ];
}

/** Points that hold the box of the decks beside these runs. */
export const deckExtremes = (layout: Layout, runs: ReadonlySet<string>): readonly Vec[] => layout.catwalks.flatMap(({ stretches, flights }) => [
  ...stretches.filter(({ run }) => runs.has(run)).flatMap(({ parts }) => parts.flatMap(({ corners }) => corners)),
  ...flights.filter(({ run }) => runs.has(run)).flatMap(({ corners }) => corners),
]);

/** Each catwalk by its name, on the middle of its deck. */
export function deckCallouts(layout: Layout, runs: ReadonlySet<string>, middle: Vec): CalloutSpec[] {
  return layout.catwalks.flatMap((catwalk): CalloutSpec[] => {
    const parts = catwalk.stretches.filter(({ run }) => runs.has(run)).flatMap((stretch) => stretch.parts);
    const [at, ...others] = [0.5, 0.25, 0.75].flatMap((share) => {
      const part = parts[Math.floor(parts.length * share)];
      return part === undefined ? [] : [viewPoint((part.corners[0].x + part.corners[2].x) / 2, (part.corners[0].y + part.corners[2].y) / 2)];
    });
    if (at === undefined) return [];
    const away = { x: at.x - middle.x, y: at.y - middle.y };
    return [{ text: catwalkMark(layout, catwalk), target: at, others, piece: null, toward: Math.hypot(away.x, away.y) < 1 ? { x: 1, y: 0 } : away, layer: 'NOTES' }];
  });
}
