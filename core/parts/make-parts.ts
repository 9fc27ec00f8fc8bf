import { type Brief, type Fault } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { clearFigures, figuresOfShortest } from './alike.ts';
import { catwalkPieces } from './catwalks/catwalk-pieces.ts';
import { copedRails } from './coped-rails.ts';
import { type DraftPiece } from './draft-piece.ts';
import { FaultList } from './faults.ts';
import { gateParts } from './gates/gate-parts.ts';
import { lappedRails } from './lapped-rails.ts';
import { markBook } from './marks.ts';
import { platePieces } from './plate-pieces.ts';
import { holdStock } from './hold-stock.ts';
import { isRampFence, rampPieces } from './ramps/ramp-pieces.ts';
import { postLookup } from './post-lookup.ts';
import { postPieces } from './post-pieces.ts';
import { signatureOf } from './signature.ts';
import { skins } from './skins.ts';
import { type Parts, type Piece } from './types.ts';
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
  const gates = gateParts(brief, layout, faults);
  const ramps = rampPieces(brief, layout, faults);
  const drafts = [...railsAndSkins(brief, layout, faults), ...ramps, ...postPieces(brief, layout), ...platePieces(layout), ...gates.pieces, ...catwalkPieces(layout, ramps)];
  if (faults.all.length > 0) return { ok: false, faults: faults.all };
  const marked = markPieces(brief, walkOrder(layout, drafts));
  holdStock(brief, marked.pieces, faults);
  return faults.all.length > 0 ? { ok: false, faults: faults.all } : { ok: true, parts: { ...marked, hardware: gates.hardware } };
}

/** Gives every piece its mark and the figures that go with it. Written out field by field: it is done for every piece at every drag. */
function markPieces(brief: Brief, drafts: readonly DraftPiece[]): Omit<Parts, 'hardware'> {
  const cleared = drafts.map(clearFigures);
  const signatures = drafts.map((draft, i) => signatureOf(draft, cleared[i]!));
  const shortest = figuresOfShortest(cleared, signatures);
  const book = markBook(brief.marks);
  const pieces = drafts.map((draft, i): Piece => {
    const signature = signatures[i]!;
    const figures = shortest.get(signature)!;
    return {
      key: draft.key,
      kind: draft.kind,
      mark: book.markOf(draft.kind, signature),
      signature,
      section: draft.section,
      length: figures.length,
      lengthShort: figures.lengthShort,
      flatHeight: figures.flatHeight,
      ...(draft.flat === undefined ? {} : { flat: draft.flat }),
      bend: figures.bend,
      weight: figures.weight,
      run: draft.run,
      side: draft.side,
      bay: draft.bay,
      bays: draft.bays,
      ends: draft.ends,
      place: draft.place,
    };
  });
  return { pieces, marks: book.marks() };
}

function railsAndSkins(brief: Brief, layout: Layout, faults: FaultList): readonly DraftPiece[] {
  const posts = postLookup(layout);
  return layout.fences.filter((fence) => !isRampFence(layout, fence)).flatMap((fence) => fence.spans.flatMap((span) => {
    const rails = fence.brief.construction === 'lapped'
      ? lappedRails(brief, fence, span, faults)
      : copedRails(brief, fence, span, posts, faults);
    return [...rails, ...skins(brief, fence, span, faults)];
  }));
}
