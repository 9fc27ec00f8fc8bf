/** The top of a post with its cap, cut through the middle: how far the plate stands back, its weld, its vent. */
import { type Brief } from '../../brief/types.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Post } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { capWeld } from '../../schedules/index.ts';
import { parseSheet } from '../../steel/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** x from the post's axis, y from its top. Null where no post has a cap. */
export function capDetail(brief: Brief, posts: readonly Post[], pieces: readonly Piece[]): Detail | null {
  const cap = pieces.find(({ place, run, side, bay }) => place.kind === 'cap' && posts.some((post) => post.run === run && post.side === side && post.bay === bay && post.kind !== 'pivot-post'));
  const post = cap === undefined ? undefined : posts.find(({ run, side, bay, kind }) => run === cap.run && side === cap.side && bay === cap.bay && kind !== 'pivot-post');
  const thickness = cap === undefined ? undefined : parseSheet(cap.section)?.thickness;
  if (cap === undefined || post === undefined || thickness === undefined) return null;
  const { along, wall, name } = post.section;
  const [r, half, low] = [along / 2, cap.length / 2, -along];
  const vent = cap.flat?.holes[0];
  const hole = vent?.kind === 'circle' ? vent.radius : 0;
  return {
    id: 'cap',
    title: say('drawings.detail.cap', { post: name }),
    bounds: boundsOf([{ x: -r, y: low }, { x: r, y: thickness }]),
    shapes: [
      ...[-r, -r + wall, r - wall, r].map((x) => straight(PENS.outline, x, low, x, 0)),
      ...[[-r, -r + wall], [r - wall, r]].map(([a, b]) => straight(PENS.outline, a!, 0, b!, 0)),
      ...(hole === 0 ? rectangle(PENS.outline, -half, half, 0, thickness) : [...rectangle(PENS.outline, -half, -hole, 0, thickness), ...rectangle(PENS.outline, hole, half, 0, thickness)]),
      straight(PENS.center, 0, low, 0, thickness + 0.5),
    ],
    dimensions: (h) => [
      size(h, 'x', [-half, thickness], [half, thickness], 1),
      size(h, 'x', [-r, low], [r, low], -1),
      size(h, 'y', [-half, 0], [-half, thickness], -1, false),
      ...(hole === 0 ? [] : [size(h, 'x', [-hole, 0], [hole, 0], -1, false)]),
    ],
    callouts: [word(hole === 0 ? 'drawings.detail.capPlate' : 'drawings.detail.capVent', [half * 0.7, thickness], [1, 0.8], { mark: cap.mark })],
    welds: [weldAt(capWeld(brief, thickness, wall), [-half, thickness / 2], [-1, 0.6])],
  };
}
