/** Plates that close the open tops of posts against rain and nests. */
import { inches, pounds } from '../base/quantity.ts';
import { flatArea } from '../base/flat-curves.ts';
import { type Contour, type FlatShape, straightPath } from '../base/flat-shape.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { gateSheet } from '../brief/gate-steel.ts';
import { type Brief } from '../brief/types.ts';
import { type Layout, type Post } from '../layout/index.ts';
import { type Section } from '../steel/index.ts';
import { pieceKey, type DraftPiece } from './draft-piece.ts';
import { ventHole } from './vent-hole.ts';

/** Common practice, no source. Inches. */
export const CAP_PRACTICE = {
  plate: '3/16',
  /** From the post's outside to the cap's edge, so that the weld lies on the pipe's end and stands nowhere proud of it. */
  inset: 0.0625,
} as const;

/** The cap of every post that nothing else stands on: a backstop's upright closes its own. */
export function postCaps(brief: Brief, layout: Layout): readonly DraftPiece[] {
  const carried = layout.openings.flatMap((one) => (one.kind === 'backstop' ? [one.sides.left.post, one.sides.right.post] : []));
  const sheet = gateSheet(CAP_PRACTICE.plate);
  const flats = new Map<string, CapFlat>();
  return layout.posts.flatMap((post): readonly DraftPiece[] => {
    if (carried.some(({ x, y }) => Math.abs(x - post.at.x) < SAME_LENGTH && Math.abs(y - post.at.y) < SAME_LENGTH)) return [];
    const known = flats.get(post.section.name);
    const flat = known ?? capFlat(post.section, brief.shop.coating === 'galvanized');
    if (known === undefined) flats.set(post.section.name, flat);
    return [{
      key: pieceKey('cap', post.run, post.side, post.bay, 0),
      kind: 'cap',
      section: sheet.name,
      length: inches(flat.along),
      lengthShort: null,
      flatHeight: inches(flat.across),
      flat: flat.shape,
      bend: null,
      weight: pounds(sheet.weightPerArea * flat.area),
      run: post.run,
      side: post.side,
      bay: post.bay,
      bays: 0,
      ends: [{ kind: 'square' }, { kind: 'square' }],
      place: { kind: 'cap', at: post.at, on: postKey(post), foot: inches(post.length - post.hole.depth) },
    }];
  });
}

/** The key of a post's own piece. */
export const postKey = ({ run, side, bay }: Pick<Post, 'run' | 'side' | 'bay'>): string => pieceKey('post', run, side, bay, 0);

interface CapFlat {
  readonly shape: FlatShape;
  readonly along: number;
  readonly across: number;
  readonly area: number;
}

/** A disc or a rectangle a little smaller than the post; a hole in it where zinc has to run. */
function capFlat(post: Section, galvanized: boolean): CapFlat {
  const [along, across] = [post.along - 2 * CAP_PRACTICE.inset, post.across - 2 * CAP_PRACTICE.inset];
  const center = { x: along / 2, y: across / 2 };
  const outer: Contour = post.shape === 'round'
    ? { kind: 'circle', center, radius: along / 2 }
    : straightPath([{ x: 0, y: 0 }, { x: along, y: 0 }, { x: along, y: across }, { x: 0, y: across }]);
  const shape: FlatShape = { outer, holes: galvanized ? [{ kind: 'circle', center, radius: ventHole(post).one / 2 }] : [] };
  return { shape, along, across, area: flatArea(shape) };
}
