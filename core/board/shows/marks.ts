/** Piece marks: of one post of each fence from far off, of every piece that is long enough on the screen from close by. */
import { leftOf, scale as times, unitAt, viewPoint, type Vec } from '../../base/points.ts';
import { type CalloutSpec } from '../../drafting/model.ts';
import { markCallouts } from '../../drawings/plan.ts';
import { facePoint, headingAt, type Fence } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { type Contributor } from './show.ts';

/** A piece is marked where it, or a post's bay, is so long on the screen, inches: room for its mark and those beside it. */
const MARKED_FROM = 3;

export const marks: Contributor = ({ input, options, middle }) => {
  if (!options.marks || options.dragged !== null) return {};
  const fences = new Map(input.layout.fences.map((fence) => [`${fence.run} ${fence.side}`, fence]));
  const close = input.parts.pieces.flatMap((piece) => {
    const fence = fences.get(`${piece.run} ${piece.side}`);
    return fence === undefined ? [] : callouts(piece, fence, options.scale);
  });
  const far = markCallouts(input, new Set(input.layout.runs.map((run) => run.name)), middle);
  const marked = new Set(close.map((spec) => spec.piece));
  return { words: [...far.filter((spec) => !marked.has(spec.piece)), ...close] };
};

function callouts(piece: Piece, fence: Fence, scale: number): CalloutSpec[] {
  const { place } = piece;
  const outward = (u: number): Vec => times(leftOf(unitAt(headingAt(fence, u))), fence.outward);
  const word = (target: Vec, toward: Vec): CalloutSpec[] => [
    { text: piece.mark, target: viewPoint(target.x, target.y), piece: piece.key, toward, layer: 'MARKS', optional: true },
  ];
  switch (place.kind) {
    case 'post':
      return fence.brief.postSpacing * scale < MARKED_FROM ? [] : word(place.at, outward(place.u));
    case 'rail': {
      if (piece.length * scale < MARKED_FROM || place.row !== fence.section.rows.length - 1) return [];
      // A third along: its middle is often a post's.
      const u = place.from + (place.to - place.from) / 3;
      return word(facePoint(fence, u, fence.section.kr), outward(u));
    }
    case 'skin': {
      if (piece.length * scale < MARKED_FROM || place.bottom > fence.brief.solidFrom) return [];
      const u = place.from + (place.to - place.from) * 0.6;
      return word(facePoint(fence, u, 0), times(outward(u), -1));
    }
    case 'plate': {
      if (piece.length * scale < MARKED_FROM / 6) return [];
      return word({ x: (place.a.x + place.b.x) / 2, y: (place.a.y + place.b.y) / 2 }, { x: 0, y: -1 });
    }
    // A leaf stands upright: its pieces lie on one another in plan, and are marked on its own drawing.
    case 'cap':
    case 'deck':
    case 'cleat':
    case 'form':
    case 'bumper':
    case 'gate':
    case 'catwalk':
      return [];
  }
}
