import { pounds } from '../base/quantity.ts';
import { type Layout } from '../layout/index.ts';
import { pieceKey, type DraftPiece } from './draft-piece.ts';

/** Every post as a piece, a shared one under its downstream run. */
export function postPieces(layout: Layout): readonly DraftPiece[] {
  return layout.posts.map((post) => ({
    key: pieceKey('post', post.run, post.side, post.bay, 0),
    kind: 'post',
    section: post.section.name,
    length: post.length,
    lengthShort: null,
    flatHeight: null,
    bend: null,
    weight: pounds(post.section.weightPerInch * post.length),
    run: post.run,
    side: post.side,
    bay: post.bay,
    bays: 0,
    ends: [{ kind: 'square' }, { kind: 'square' }],
    place: { kind: 'post', at: post.at, u: post.u },
  }));
}
