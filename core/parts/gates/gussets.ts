/** Plates in the corners of a leaf's frame. */
import { type FlatShape, straightPath } from '../../base/flat-shape.ts';
import { inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSheet } from '../../brief/gate-steel.ts';
import { type Section } from '../../steel/index.ts';
import { edgesSeen, flatMember, type Member } from './member.ts';

const { from, plate, leg, least, clip, tip, offBar } = GATE_PRACTICE.gusset;

/** The outer edges of a mitred frame. */
interface Frame {
  readonly left: number;
  readonly right: number;
  readonly bottom: number;
  readonly top: number;
  readonly frame: Section;
}

/** Four gussets of a leaf, two where a bar lies too near to a rail of the frame; none in a narrow leaf. `rows`: heights of its bars. */
export function gussetMembers({ left, right, bottom, top, frame }: Frame, rows: readonly number[], bar: Section): readonly Member[] {
  if (right - left <= from) return [];
  const w = frame.across;
  const sides = [
    { y: bottom + w, up: 1, room: Math.min(...rows) - bar.across / 2 - bottom - w },
    { y: top - w, up: -1, room: top - w - Math.max(...rows) - bar.across / 2 },
  ];
  return sides.flatMap(({ y, up, room }) => {
    const size = Math.min(leg, room - offBar);
    if (size < least) return [];
    const shape = gussetShape(size);
    return [{ x: left + w, in: 1 }, { x: right - w, in: -1 }].map(({ x, in: way }) => {
      const corners = gussetCorners(size).map((p) => ({ x: inches(x + way * p.x), y: inches(y + up * p.y) }));
      const box = edgesSeen(Math.min(x, x + way * size), Math.max(x, x + way * size), Math.min(y, y + up * size), Math.max(y, y + up * size));
      return flatMember('gusset', gateSheet(plate), shape, { ...box, corners });
    });
  });
}

/** From the inner corner of the frame along its two members. */
const gussetCorners = (size: number): readonly { readonly x: number; readonly y: number }[] =>
  [{ x: clip, y: 0 }, { x: size, y: 0 }, { x: size, y: tip }, { x: tip, y: size }, { x: 0, y: size }, { x: 0, y: clip }];

const gussetShape = (size: number): FlatShape => ({ outer: straightPath(gussetCorners(size)), holes: [] });
