import { type Brief, type Fault } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { clearFigures, figuresOfShortest } from './alike.ts';
import { copedRails } from './coped-rails.ts';
import { type DraftPiece } from './draft-piece.ts';
import { FaultList } from './faults.ts';
import { lappedRails } from './lapped-rails.ts';
import { markBook } from './marks.ts';
import { platePieces } from './plate-pieces.ts';
import { postLookup } from './post-lookup.ts';
import { postPieces } from './post-pieces.ts';
import { signatureOf } from './signature.ts';
import { skins } from './skins.ts';
import { type Parts } from './types.ts';
import { walkOrder } from './walk-order.ts';

export type PartsResult =
  | { readonly ok: true; readonly parts: Parts }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Every piece of steel of a set-out, in the order of the walk, with its mark. Pure: the same brief and layout give the same pieces.
 * What the shop's stock cannot make is a list of faults.
 */
export function makeParts(brief: Brief, layout: Layout): PartsResult {
  const faults = new FaultList(brief);
  const drafts = [...railsAndSkins(brief, layout, faults), ...postPieces(layout), ...platePieces(layout)];
  if (faults.all.length > 0) return { ok: false, faults: faults.all };
  const signed = drafts.map((draft) => {
    const piece = clearFigures(draft);
    return { ...piece, signature: signatureOf(piece) };
  });
  const book = markBook(brief.marks);
  const pieces = walkOrder(layout, figuresOfShortest(signed, (piece) => piece.signature))
    .map((piece) => ({ ...piece, mark: book.markOf(piece.kind, piece.signature) }));
  return { ok: true, parts: { pieces, marks: book.marks() } };
}

function railsAndSkins(brief: Brief, layout: Layout, faults: FaultList): readonly DraftPiece[] {
  const posts = postLookup(layout);
  return layout.fences.flatMap((fence) => fence.spans.flatMap((span) => {
    const rails = fence.brief.construction === 'lapped'
      ? lappedRails(brief, fence, span, faults)
      : copedRails(brief, fence, span, posts, faults);
    return [...rails, ...skins(brief, fence, span, faults)];
  }));
}
