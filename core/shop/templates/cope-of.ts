import { inches, radians, toDegrees } from '../../base/quantity.ts';
import { CUT_STEP } from '../../base/tolerance.ts';
import { type EndCut, type Piece } from '../../parts/index.ts';
import { type Section } from '../../steel/index.ts';
import { type Cope } from './types.ts';

/** The cope at an end of a piece; null where it is cut square, or where there is no pipe to wrap. */
export function copeOf(piece: Pick<Piece, 'kind' | 'bend' | 'flatHeight'>, cut: EndCut, section: Section): Cope | null {
  if (section.shape !== 'round' || piece.flatHeight !== null) return null;
  const branch = inches(section.across / 2);
  const bend = piece.bend?.radius ?? null;
  switch (cut.kind) {
    case 'square':
    case 'plumb':
      return null;
    case 'cope':
      return { kind: 'saddle', branch, header: cut.postRadius, slope: radians(0), bend };
    case 'slope-cope':
      return { kind: 'saddle', branch, header: cut.postRadius, slope: cut.slope, bend };
    case 'slope-mitre':
      return { kind: 'mitre', branch, angle: cut.angle, lies: 'slope', bend, long: null };
    case 'mitre':
      return {
        kind: 'mitre', branch, angle: radians(Math.abs(cut.angle)), lies: piece.kind === 'gate' ? 'frame' : 'level', bend,
        long: bend === null ? null : cut.angle > 0 ? 'outside' : 'inside',
      };
  }
}

/**
 * How far the seams of a piece's two ends are turned from each other. A template is printed one way, so that on a rolled piece, whose
 * inside is on the other hand at its other end, the seam goes to the other side; so it does where two mitres have their long points in
 * line, and on a ramp's rail, whose obtuse side lies underneath at the lower post and on top at the upper one.
 */
export function turnOf(piece: Pick<Piece, 'bend' | 'ends'>): 0 | 180 {
  const [first, second] = piece.ends;
  if (piece.bend !== null || first.kind === 'slope-cope') return 180;
  return first.kind === 'mitre' && second.kind === 'mitre' && first.angle * second.angle > 0 ? 180 : 0;
}

/** Added to a figure in steps before it is cut to whole ones, as for piece marks: no binary fraction of an inch stands on a border then. */
const SHIFT = 0.53;

/** What makes two copes one: each figure to CUT_STEP, angles in degrees. */
export function copeKey(cope: Cope): string {
  const bucket = (value: number): string => String(Math.floor(value / CUT_STEP + SHIFT));
  const lengths = [cope.branch, cope.bend ?? 0, cope.kind === 'saddle' ? cope.header : 0].map(bucket);
  const rest = cope.kind === 'saddle' ? [bucket(toDegrees(cope.slope))] : [bucket(toDegrees(cope.angle)), cope.lies, cope.long ?? ''];
  return [cope.kind, ...lengths, ...rest].join(' ');
}
