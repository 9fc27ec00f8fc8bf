/** The two eyes of the spring that shuts a man gate. */
import { type FlatShape } from '../../base/flat-shape.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSheet } from '../../brief/gate-steel.ts';
import { boltHole } from '../../steel/index.ts';
import { edgesSeen, flatMember, type Member } from './member.ts';

const { plate, thickness, long, wide, hook } = GATE_PRACTICE.springEye;
/** Share of the leaf's height at which the spring is wanted: clear of the hinges. */
const WANTED = 0.62;

const half = wide / 2;
const SHAPE: FlatShape = {
  outer: { kind: 'path', corners: [{ x: 0, y: 0, bulge: 0 }, { x: long - half, y: 0, bulge: 1 }, { x: long - half, y: wide, bulge: 0 }, { x: 0, y: wide, bulge: 0 }] },
  holes: [{ kind: 'circle', center: { x: long - half, y: half }, radius: boltHole(hook) / 2 }],
};

interface Hung {
  /** Axis of the jamb post, and the leaf's free end, from the pin. */
  readonly post: number;
  readonly reach: number;
  readonly bottom: number;
  readonly top: number;
  /** Heights of the leaf's bars. */
  readonly rows: readonly number[];
}

/** On the jamb post's back and on the leaf's bar nearest to where the spring is wanted, at one height, lying flat. */
export function springEyes({ post, reach, bottom, top, rows }: Hung): { readonly still: Member; readonly moving: Member } {
  const wanted = bottom + (top - bottom) * WANTED;
  const y = rows.toSorted((a, b) => Math.abs(a - wanted) - Math.abs(b - wanted) || a - b)[0] ?? wanted;
  const at = (x: number): Member => flatMember('eye', gateSheet(plate), SHAPE, edgesSeen(x - half, x + half, y - thickness / 2, y + thickness / 2));
  return { still: at(post), moving: at(Math.min(8, reach / 2)) };
}
