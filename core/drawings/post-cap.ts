/** A post's cap from the side, and its mark beside the post's own on one leader. */
import { inches } from '../base/quantity.ts';
import { PENS } from '../drafting/kit.ts';
import { type BandLabel, type Shape } from '../drafting/model.ts';
import { type Piece } from '../parts/index.ts';
import { parseSheet } from '../steel/index.ts';
import { say } from '../text/index.ts';
import { rectangle } from './gate-outline.ts';

interface Capped {
  readonly piece: Piece;
  readonly cap: Piece | null;
  readonly top: number;
}

const thickness = (cap: Piece): number => parseSheet(cap.section)?.thickness ?? 0;

/** On the post whose axis stands at `x`. */
export function capShapes({ cap, top }: Capped, x: number): readonly Shape[] {
  if (cap === null) return [];
  return rectangle(PENS.outline, x - cap.length / 2, x + cap.length / 2, top, top + thickness(cap), cap.key);
}

/** The mark of a post, whose leader ends at `y`, with that of its cap where it has one. */
export function postLabel({ piece, cap, top }: Capped, x: number, y: number): BandLabel {
  const post = { y: inches(y), piece: piece.key };
  if (cap === null) return { text: piece.mark, x: inches(x), targets: [post] };
  return { text: say('drawings.elevation.capped', { post: piece.mark, cap: cap.mark }), x: inches(x), targets: [post, { y: inches(top + thickness(cap) / 2), piece: cap.key }] };
}
