/** A ramp's fence as its elevation draws it: level from the low end, plumb from the ground. */
import { type Vec } from '../../base/points.ts';
import { type Radians, radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { fromLowEnd, lineHeight, type Ramp } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { type FenceParts, type FencePost } from '../panel-parts.ts';

export interface FencePostAt extends Pick<FencePost, 'along' | 'piece' | 'cap' | 'top'> {
  readonly s: number;
}
export interface RailAt {
  readonly piece: Piece;
  readonly from: number;
  readonly to: number;
  readonly height: number;
  readonly slope: Radians;
}
export interface SkinAt {
  readonly piece: Piece;
  readonly from: number;
  readonly to: number;
  readonly bottom: number;
  readonly top: number;
}
export interface SlopedFence {
  readonly panel: FenceParts;
  readonly ramp: Ramp;
  /** From the low end up. */
  readonly posts: readonly FencePostAt[];
  readonly rails: readonly RailAt[];
  readonly skins: readonly SkinAt[];
  /** The line that the fence follows. */
  line(s: number): number;
}

export function slopedFence(ramp: Ramp, panel: FenceParts): SlopedFence {
  const s = (u: number): number => fromLowEnd(ramp, u);
  const ends = (a: number, b: number): { from: number; to: number } => ({ from: Math.min(s(a), s(b)), to: Math.max(s(a), s(b)) });
  const slopeAt = (to: number): Radians => (to <= ramp.figures.run + SAME_LENGTH ? ramp.figures.slope : radians(0));
  return {
    panel,
    ramp,
    posts: panel.posts.map(({ u, piece, cap, top, along }) => ({ s: s(u), piece, cap, top, along })).sort((a, b) => a.s - b.s),
    rails: panel.rails.flatMap((piece): RailAt[] => {
      if (piece.place.kind !== 'rail') return [];
      const { from, to } = ends(piece.place.from, piece.place.to);
      return [{ piece, from, to, height: piece.place.height, slope: slopeAt(to) }];
    }),
    skins: panel.skins.flatMap((piece): SkinAt[] => {
      if (piece.place.kind !== 'skin') return [];
      const { from, to } = ends(piece.place.from, piece.place.to);
      return [{ piece, from, to, bottom: piece.place.bottom, top: piece.place.top }];
    }),
    line: (at) => lineHeight(ramp.figures, at),
  };
}

/** The corners of a rail of this size: two edges square off its axis, to its ends or to where it is cut from view. */
export function railCorners(fence: SlopedFence, rail: RailAt, size: number, from: number, to: number): readonly [Vec, Vec, Vec, Vec] {
  const [a, b] = [axisPoint(fence, rail, from), axisPoint(fence, rail, to)];
  const off = { x: (-Math.sin(rail.slope) * size) / 2, y: (Math.cos(rail.slope) * size) / 2 };
  // Where the slope breaks the upper edges run on to the mitre and the lower ones stop short of it.
  const { run, slope, dockLength } = fence.ramp.figures;
  const turn = dockLength > SAME_LENGTH ? (size / 2) * Math.tan(slope / 2) : 0;
  const past = { x: Math.cos(rail.slope) * turn, y: Math.sin(rail.slope) * turn };
  const start = Math.abs(from - run) < SAME_LENGTH && rail.slope === 0 ? -1 : 0;
  const end = Math.abs(to - run) < SAME_LENGTH && rail.slope !== 0 ? 1 : 0;
  const corner = (p: Vec, side: number, way: number): Vec => ({ x: p.x + side * off.x + side * way * past.x, y: p.y + side * off.y + side * way * past.y });
  return [corner(a, -1, start), corner(b, -1, end), corner(b, 1, end), corner(a, 1, start)];
}

/** A point of a rail's axis, or of the line carried on where the rail is seen to run. */
function axisPoint(fence: SlopedFence, rail: RailAt, s: number): Vec {
  return { x: s, y: fence.line(s) + rail.height };
}
