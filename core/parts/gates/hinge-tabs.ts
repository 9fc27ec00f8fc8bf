/** Where the hinges of a leaf stand, and the plates that reach to them from a post behind lapped rails. */
import { straightPath } from '../../base/flat-shape.ts';
import { inches, type Inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSheet } from '../../brief/gate-steel.ts';
import { type Fence } from '../../layout/index.ts';
import { type Section } from '../../steel/index.ts';
import { edgesSeen, flatMember, type Member } from './member.ts';

export type HungKind = 'man-gate' | 'pen-gate' | 'alley-gate';

const { manGate, latchedGate, hinge, hingeTab } = GATE_PRACTICE;

interface Usual {
  readonly ground: number;
  readonly fromEnd: number;
  readonly barrel: number;
  /** Height of what stands between the rails: a tab as long as its hinge, or an alley gate's bracket. */
  readonly high: number;
}

function usualOf(kind: HungKind): Usual {
  switch (kind) {
    case 'man-gate':
      return { ground: manGate.ground, fromEnd: hinge.fromEnd, barrel: hinge.barrel, high: hinge.length };
    case 'pen-gate':
      return { ground: latchedGate.ground, fromEnd: latchedGate.hinge.fromEnd, barrel: latchedGate.hinge.barrel, high: latchedGate.hinge.length };
    case 'alley-gate':
      return { ground: latchedGate.ground, fromEnd: latchedGate.hinge.fromEnd, barrel: latchedGate.hinge.barrel, high: latchedGate.bracket.high };
  }
}

const isClear = ({ section }: Fence, y: number, high: number): boolean =>
  section.rows.every((row) => Math.abs(row - y) >= high / 2 + section.railHeight / 2 + hingeTab.offRail);

/**
 * Heights of the lower and the upper hinge of a leaf. Where a tab or a bracket stands between the rails, as near to the leaf's ends as
 * those let it; where they leave no room, or only one that would bring the two hinges together, the usual ones.
 */
export function hingeHeights(fence: Fence, kind: HungKind): readonly [Inches, Inches] {
  const { ground, fromEnd, high: tall } = usualOf(kind);
  const [low, high] = [ground + fromEnd, fence.brief.height - fromEnd];
  const usual = [inches(low), inches(high)] as const;
  if (kind !== 'alley-gate' && fence.brief.construction === 'coped') return usual;
  const free = (from: number, way: 1 | -1): number => {
    const tries = Array.from({ length: Math.max(1, Math.floor((high - low) * 2)) }, (_, i) => from + (way * i) / 4);
    return tries.find((y) => isClear(fence, y, tall)) ?? from;
  };
  const [a, b] = [free(low, 1), free(high, -1)];
  return b - a < (high - low) / 2 ? usual : [inches(a), inches(b)];
}

/**
 * The tabs of a leaf that hangs beside a lapped fence, edge on from the front: in the jamb's plane, from the rails' cattle side to the
 * post. Where the rails leave no room for one its hinge stands on their ends.
 */
export function hingeTabs(fence: Fence, post: Section, kind: Exclude<HungKind, 'alley-gate'>): readonly Member[] {
  if (fence.brief.construction === 'coped') return [];
  const { barrel, high } = usualOf(kind);
  const deep = tabDepth(fence, post);
  const shape = { outer: straightPath([{ x: 0, y: 0 }, { x: high, y: 0 }, { x: high, y: deep }, { x: 0, y: deep }]), holes: [] };
  return hingeHeights(fence, kind).filter((y) => isClear(fence, y, high))
    .map((y) => flatMember('tab', gateSheet(hingeTab.plate), shape, edgesSeen(-barrel / 2 - hingeTab.thickness, -barrel / 2, y - high / 2, y + high / 2)));
}

/** From the rails' cattle side to where the plate's inner face meets the post, which touches the jamb's plane. */
export function tabDepth({ section: { d } }: Fence, post: Section): number {
  if (post.shape === 'rectangular') return d;
  const r = post.across / 2;
  return d + r - Math.sqrt(Math.max(0, r * r - (r - hingeTab.thickness) ** 2));
}
