/** A deck's bracket on the back of its post, seen along the fence: plate, bearers, the deck on them, and their welds. */
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Fence } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { bracketWeld, deckSeamWeld } from '../../schedules/index.ts';
import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

const { deck, bearer, bracket } = CATWALK_PRACTICE;

/** x out from the post's back, y from the bracket's upper edge. `piece`: the bracket. Null where the deck has none. */
export function bracketDetail(brief: Brief, mark: string, fence: Fence, piece: Piece | undefined): Detail | null {
  if (piece === undefined || piece.flatHeight === null) return null;
  const [reach, depth] = [piece.length, piece.flatHeight];
  const { post } = fence.brief;
  const bar = gateSection(bearer.section);
  const top = bearer.size + deck.thickness;
  const low = -depth - 3;
  return {
    id: `bracket ${mark}`,
    title: say('drawings.detail.bracket', { mark, post: post.name }),
    bounds: boundsOf([{ x: -post.across, y: low }, { x: reach + 1, y: top }]),
    shapes: [
      ...[-post.across, 0].map((x) => straight(PENS.outline, x, low, x, top + 3)),
      straight(PENS.center, -post.across / 2, low, -post.across / 2, top + 3),
      straight(PENS.outline, 0, 0, reach, 0), straight(PENS.outline, reach, 0, reach, -bracket.tip),
      straight(PENS.outline, reach, -bracket.tip, 0, -depth),
      ...[0, reach - bearer.size].flatMap((x) => [
        ...rectangle(PENS.outline, x, x + bearer.size, 0, bearer.size), ...rectangle(PENS.thin, x + bar.wall, x + bearer.size - bar.wall, bar.wall, bearer.size - bar.wall),
      ]),
      ...rectangle(PENS.outline, 0, reach, bearer.size, top),
    ],
    dimensions: (h) => [
      size(h, 'x', [0, -depth], [reach, -bracket.tip], -1),
      size(h, 'y', [0, -depth], [0, 0], -1),
      size(h, 'y', [reach, -bracket.tip], [reach, 0], 1),
      size(h, 'y', [reach, 0], [reach, bearer.size], 1, false),
    ],
    callouts: [
      word('drawings.detail.bracketPlate', [reach * 0.4, -bracket.tip], [0.6, -1], { mark: piece.mark, plate: bracket.plate }),
      word('drawings.detail.bearerOnBracket', [reach - bearer.size / 2, bearer.size * 0.6], [1, 0.6], { bearer: bearer.section }),
      word('drawings.detail.deckPlate', [reach / 2, top], [0.3, 1], { plate: deck.plate }),
    ],
    welds: [
      weldAt(bracketWeld(brief, 'bracket-post', inches(Math.min(bracket.thickness, post.wall))), [0, -depth * 0.6], [-1, -0.6]),
      weldAt(bracketWeld(brief, 'bearer-bracket', inches(Math.min(bracket.thickness, bar.wall))), [bearer.size, 0], [0.8, -1]),
      weldAt(deckSeamWeld(brief, 'deck-bearer', inches(Math.min(deck.thickness, bar.wall))), [bearer.size, bearer.size], [0.8, 1], true),
    ],
  };
}
