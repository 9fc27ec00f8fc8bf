import { type Contour } from '../base/flat-shape.ts';
import { toDegrees } from '../base/quantity.ts';
import { CUT_STEP } from '../base/tolerance.ts';
import { type Figures } from './alike.ts';
import { type DraftPiece } from './draft-piece.ts';
import { type EndCut } from './types.ts';

/**
 * Added to a figure in steps before it is cut to whole ones: nearly to the nearest, but with the border beside the half step. A binary
 * fraction of an inch (1/32 in is 312.5 steps) would stand on a border at the half, where floating noise would part alike pieces.
 */
const SHIFT = 0.53;

/** A figure to the nearest step, as text. */
const bucket = (value: number): string => (Math.floor(value / CUT_STEP + SHIFT) * CUT_STEP).toFixed(4);

/**
 * What makes two pieces alike: kind, section, lengths, bend and end cuts, each to CUT_STEP. Two pieces with one signature can be
 * swapped, so the order of the ends does not enter: a piece turned end for end is the same piece. Nor does the hand: all ends here are
 * cut square, coped level, or mitred by an upright plane, so that a mirrored piece is the same piece upside down. What slopes with a
 * ramp is its own image in the upright plane along the fence, and a coped rail there has its two ends turned to each other.
 */
export function signatureOf(piece: Pick<DraftPiece, 'kind' | 'section' | 'ends' | 'flat'>, figures: Figures): string {
  let text = `${piece.kind}; ${piece.section}; ${bucket(figures.length)}`;
  if (figures.lengthShort !== null) text += `; short ${bucket(figures.lengthShort)}`;
  if (figures.flatHeight !== null) text += `; high ${bucket(figures.flatHeight)}`;
  if (figures.bend !== null) text += `; radius ${bucket(figures.bend.radius)}`;
  if (piece.flat !== undefined) text += [piece.flat.outer, ...piece.flat.holes].map((contour) => `; ${contourText(contour)}`).join('');
  const [first, second] = [cutText(piece.ends[0]), cutText(piece.ends[1])];
  if (first === 'square' && second === 'square') return text;
  return first < second ? `${text}; ${first}; ${second}` : `${text}; ${second}; ${first}`;
}

/** Corner by corner: two flat parts with one text are cut from one drawing. */
function contourText(contour: Contour): string {
  if (contour.kind === 'circle') return `hole ${bucket(contour.center.x)} ${bucket(contour.center.y)} ${bucket(contour.radius)}`;
  return `outline ${contour.corners.map(({ x, y, bulge }) => `${bucket(x)} ${bucket(y)} ${bucket(bulge)}`).join(', ')}`;
}

function cutText(cut: EndCut): string {
  switch (cut.kind) {
    case 'square':
      return 'square';
    case 'mitre':
      return `mitre ${bucket(toDegrees(cut.angle))}`;
    case 'cope':
      return `cope ${bucket(cut.postRadius)}`;
    case 'slope-mitre':
      return `slope mitre ${bucket(toDegrees(cut.angle))}`;
    case 'slope-cope':
      return `cope ${bucket(cut.postRadius)} slope ${bucket(toDegrees(cut.slope))}`;
    case 'plumb':
      return `plumb ${bucket(toDegrees(cut.slope))}`;
  }
}
