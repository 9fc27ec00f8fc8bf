import { signedAngle } from '../../base/angle.ts';
import { crossings } from '../../base/crossing.ts';
import { planPoint, unitAt, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { handedAngle, turnSign } from '../pose.ts';
import { type Fence } from '../types.ts';
import { distanceToFace } from './distance-to-face.ts';
import { type CrowdGate } from './types.ts';

/** Between two tries of how far the leaf must stand off what is beside it, radians. */
const STEP = Math.PI / 180;

/** Half the leaf's thickness as it swings: its frame with its skin. */
export function crowdLeafHalf(brief: Brief): Inches {
  const skin = brief.fences.crowdPen.sheet ?? gateSheet('12 ga');
  return inches(gateSection(GATE_PRACTICE.crowdGate.frame).across / 2 + skin.thickness);
}

/**
 * The crowd gate: from where its open leaf rests beside the alley's inner fence, clear of the closing plate, through the entry, to the
 * exit, or as near to it as the funnel lets it come.
 */
export function standCrowdGate(brief: Brief, fences: readonly Fence[]): CrowdGate {
  const { hand, sweep, radius, funnelAngle, gateClearance, pivotPost } = brief.crowdPen;
  const sign = turnSign(hand);
  const from = inches(Math.max(pivotPost.across, pivotPost.along) / 2 + GATE_PRACTICE.crowdGate.hingeGap);
  const reach = inches(radius - gateClearance);
  const half = crowdLeafHalf(brief);
  const aside = besidePlate(from, half);
  const alley = fences.filter(({ run }) => run.startsWith('alley-'));
  const back = handedAngle(hand, Math.PI / 2 - sweep) + Math.PI;
  const angle = restAngle(back, sign, { from, reach, half, aside }, alley);
  const exit = Math.min(sweep, sweep + Math.PI / 2 - funnelAngle - aside);
  const rest = angle === null ? null : { turn: radians(-sign * (Math.PI / 2 - angle)), angle, clear: clearBeside(back + sign * angle, sign, { reach, half }, alley, hand) };
  return {
    kind: 'crowd-gate',
    run: 'crowd-pen',
    side: hand,
    path: 'crowdPen',
    at: planPoint(0, 0),
    from,
    half,
    swing: { pin: planPoint(0, 0), reach, shut: signedAngle(handedAngle(hand, -sweep)), turn: radians(sign * exit) },
    rest,
    teeth: teeth(fences),
  };
}

/** How far, in angle, the leaf's side must stand off a face through the pivot post's center, on which a plate begins at the post. */
function besidePlate(from: number, half: number): Radians {
  const away = Math.hypot(from, half);
  return radians(Math.asin(Math.min(1, GATE_PRACTICE.crowdGate.restClear / away)) + Math.atan2(half, from));
}

interface Leaf {
  readonly from: Inches;
  readonly reach: Inches;
  readonly half: Inches;
  readonly aside: Radians;
}

/** The least angle off the alley's inner face at which the leaf crosses no fence of the alley; null where there is none. */
function restAngle(back: number, sign: number, leaf: Leaf, alley: readonly Fence[]): Radians | null {
  for (let angle: number = leaf.aside; angle < Math.PI / 2; angle += STEP) {
    const direction = back + sign * angle;
    const edges = [-1, 1].map((side) => edge(direction, side * (leaf.half + GATE_PRACTICE.crowdGate.restClear), leaf.from, leaf.reach));
    const end = { kind: 'line' as const, a: edges[0]!.b, b: edges[1]!.b };
    if (alley.every(({ face }) => [...edges, end].every((line) => crossings(line, face).length === 0))) return radians(angle);
  }
  return null;
}

/** A side of the leaf, `left` inches to the left of the direction in which it points. */
function edge(direction: number, left: number, from: number, reach: number): { readonly kind: 'line'; readonly a: PlanPoint; readonly b: PlanPoint } {
  const along = unitAt(direction);
  const at = (r: number): PlanPoint => planPoint(along.x * r - along.y * left, along.y * r + along.x * left);
  return { kind: 'line', a: at(from), b: at(reach) };
}

/** The alley width left clear: from the leaf's far corner to the nearest point of the alley's outer face. */
function clearBeside(direction: number, sign: number, { reach, half }: Pick<Leaf, 'reach' | 'half'>, alley: readonly Fence[], hand: Brief['crowdPen']['hand']): Inches {
  const corner: Vec = edge(direction, sign * half, 0, reach).b;
  const outer = alley.filter(({ side }) => side !== hand);
  return inches(Math.min(...outer.map(({ face }) => distanceToFace(face, corner))));
}

/** Places along the outer face for the ratchet's teeth, from the entry on; none in an opening. */
function teeth(fences: readonly Fence[]): readonly Inches[] {
  const outer = fences.find(({ run }) => run === 'crowd-pen');
  if (outer === undefined) throw new Error('a crowd pen without its outer fence');
  const { each, width } = GATE_PRACTICE.crowdGate.tooth;
  const count = Math.floor((outer.length - width) / each);
  return Array.from({ length: count }, (_, i) => inches((i + 0.5) * each + width / 2))
    .filter((u) => outer.spans.some(({ skinFrom, skinTo }) => u - width > skinFrom && u + width < skinTo));
}
