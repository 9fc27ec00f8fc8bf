/** One piece of a gate before it has a place among the pieces: its section, sizes, and outline as seen from the front. */
import { contourBox, flatArea } from '../../base/flat-curves.ts';
import { type FlatShape } from '../../base/flat-shape.ts';
import { inches, pounds, type Inches, type Pounds } from '../../base/quantity.ts';
import { type Section, type Sheet } from '../../steel/index.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type EndCut, type GateOutline, type GatePart, type GatePoint } from '../types.ts';

export interface Member {
  readonly part: GatePart;
  readonly section: string;
  readonly length: Inches;
  readonly lengthShort: Inches | null;
  readonly flatHeight: Inches | null;
  readonly weight: Pounds;
  readonly ends: readonly [EndCut, EndCut];
  readonly outline: GateOutline;
  /** A flat part with holes. */
  readonly flat?: FlatShape;
}

interface At {
  readonly x: number;
  readonly y: number;
}

/** A bar between two points of its axis; both ends cut alike, `long` and `short` from point to point. */
export function barMember(part: GatePart, section: Section, a: At, b: At, ends: { readonly long: number; readonly short: number; readonly cut: EndCut }): Member {
  return {
    part,
    section: section.name,
    length: inches(ends.long),
    lengthShort: ends.cut.kind === 'square' ? null : inches(ends.short),
    flatHeight: null,
    weight: pounds((section.weightPerInch * (ends.long + ends.short)) / 2),
    ends: [ends.cut, ends.cut],
    outline: { kind: 'bar', a: { x: inches(a.x), y: inches(a.y) }, b: { x: inches(b.x), y: inches(b.y) }, size: section.across, mitred: ends.cut.kind === 'mitre' },
  };
}

/** A bar cut square whose length is that of its axis. */
export function squareBar(part: GatePart, section: Section, a: At, b: At): Member {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  return barMember(part, section, a, b, { long: length, short: length, cut: { kind: 'square' } });
}

/** A flat piece by its edges. */
export function plateMember(part: GatePart, sheet: Sheet, left: number, right: number, bottom: number, top: number): Member {
  return {
    part,
    section: sheet.name,
    length: inches(right - left),
    lengthShort: null,
    flatHeight: inches(top - bottom),
    weight: pounds(sheet.weightPerArea * (right - left) * (top - bottom)),
    ends: [{ kind: 'square' }, { kind: 'square' }],
    outline: edgesSeen(left, right, bottom, top),
  };
}

/** A flat piece of any outline, seen from the front by these edges: on edge, or lying flat. */
export function flatMember(part: GatePart, sheet: Sheet, shape: FlatShape, seen: Extract<GateOutline, { kind: 'plate' }>): Member {
  const { left, right, low, high } = contourBox(shape.outer);
  return {
    part, section: sheet.name, length: inches(right - left), lengthShort: null, flatHeight: inches(high - low),
    weight: pounds(sheet.weightPerArea * flatArea(shape)), ends: [{ kind: 'square' }, { kind: 'square' }], outline: seen, flat: shape,
  };
}

/** What a plate shows from the front, by its edges. */
export const edgesSeen = (left: number, right: number, bottom: number, top: number): Extract<GateOutline, { kind: 'plate' }> =>
  ({ kind: 'plate', left: inches(left), right: inches(right), bottom: inches(bottom), top: inches(top) });

/**
 * A bar longer than its stock, in as few equal parts as that allows, butt welded: each end part has the bar's own end and a square one.
 * Anything else is itself.
 */
export function spliced(member: Member, stock: number): readonly Member[] {
  const { outline, length, lengthShort, ends, weight } = member;
  if (outline.kind === 'plate' || length <= stock + SAME_LENGTH) return [member];
  const { a, b } = outline;
  const axis = Math.hypot(b.x - a.x, b.y - a.y);
  const [over, under] = [(length - axis) / 2, (axis - (lengthShort ?? length)) / 2];
  const count = Math.max(2, Math.ceil(axis / (stock - Math.max(0, over)) - SAME_LENGTH));
  const share = axis / count;
  const at = (i: number): GatePoint => ({ x: inches(a.x + ((b.x - a.x) * i) / count), y: inches(a.y + ((b.y - a.y) * i) / count) });
  const perInch = (2 * weight) / (length + (lengthShort ?? length));
  return Array.from({ length: count }, (_, i): Member => {
    const own = i === 0 || i === count - 1;
    const [long, short] = own ? [share + over, share - under] : [share, share];
    const square = { kind: 'square' } as const;
    return {
      ...member,
      length: inches(long),
      lengthShort: own && lengthShort !== null ? inches(short) : null,
      weight: pounds((perInch * (long + short)) / 2),
      ends: [i === 0 ? ends[0] : square, i === count - 1 ? ends[1] : square],
      outline: { ...outline, a: at(i), b: at(i + 1), mitred: false },
    };
  });
}
