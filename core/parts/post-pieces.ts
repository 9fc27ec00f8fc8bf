import { pounds } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { type DraftPiece } from './draft-piece.ts';
import { postCaps, postKey } from './post-caps.ts';

/** Every post as a piece, a shared one under its downstream run, and the caps on them. */
export function postPieces(brief: Brief, layout: Layout): readonly DraftPiece[] {
  const posts = layout.posts.map((post): DraftPiece => ({
    key: postKey(post),
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
  return [...posts, ...postCaps(brief, layout)];
}
