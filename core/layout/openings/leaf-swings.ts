/** The ground that each kind of leaf passes over. */
import { add, angleOf, distance, scale, sub, type PlanPoint } from '../../base/points.ts';
import { degrees, inches, radians, type Inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type AlleyGateBrief, type PenGateBrief } from '../../brief/types.ts';
import { facePoint } from '../fence-points.ts';
import { type Fence } from '../types.ts';
import { type Swing } from './types.ts';

/** A leaf between two jambs whose pin stands `pin` off the hinge's jamb, on the line `offset` outward from the face. */
function between(fence: Fence, hinge: number, free: number, offset: number, pin: number, gap: number): Omit<Swing, 'turn'> {
  const a = facePoint(fence, hinge, offset);
  const b = facePoint(fence, free, offset);
  const clear = distance(a, b);
  return { pin: add(a, scale(sub(b, a), pin / clear)) as PlanPoint, reach: inches(clear - pin - gap), shut: radians(angleOf(sub(b, a))) };
}

/** The leaf's pin stands half a barrel off the first jamb, its barrel flush with the cattle side of the rails; the leaf turns to the cattle. */
export function manGateSwing(fence: Fence, from: number, to: number): Swing {
  const { hinge, manGate: { strikeGap, opens } } = GATE_PRACTICE;
  const leaf = between(fence, from, to, fence.section.t + hinge.barrel / 2, hinge.barrel / 2, strikeGap);
  return { ...leaf, turn: radians(-fence.outward * degrees(opens)) };
}

/** Half the thickness of a latched leaf's frame. */
export const latchedHalf = (): Inches => inches(gateSection(GATE_PRACTICE.latchedGate.frame).across / 2);

/** The pin stands in the middle of the leaf, whose cattle side is that of the rails, so that it may turn either way. */
export function penGateSwing(fence: Fence, from: number, to: number, { swings, hangs }: Pick<PenGateBrief, 'swings' | 'hangs'>): Swing {
  const { hinge, strikeGap, opens } = GATE_PRACTICE.latchedGate;
  const [a, b] = hangs === 'first' ? [from, to] : [to, from];
  const leaf = between(fence, a, b, fence.section.t + latchedHalf(), hinge.barrel / 2, strikeGap);
  const sign = (swings === 'in' ? -1 : 1) * (hangs === 'first' ? 1 : -1) * fence.outward;
  return { ...leaf, turn: radians(sign * degrees(opens)) };
}

/** Clear between an alley gate's barrel and the face that it hangs on, and between its open leaf and a wall that bends toward it. */
const OFF_FACE = 0.25;

/** From the face to an alley gate's pin. */
export const alleyPin = (): Inches => inches(GATE_PRACTICE.latchedGate.hinge.barrel / 2 + OFF_FACE);

/**
 * A leaf from the face at `u` of the fence that it hangs on to the point across. It opens along that fence; where the fence bends toward
 * the cattle, as an outer wall does, only until its end comes near to it.
 */
export function alleyGateSwing(fence: Fence, u: number, across: PlanPoint, swings: AlleyGateBrief['swings']): Swing {
  const face = facePoint(fence, u, 0);
  const clear = distance(face, across);
  const pin = alleyPin();
  const reach = inches(clear - pin - GATE_PRACTICE.latchedGate.strikeGap);
  // Of a left fence the walk is to the left of the way across.
  const sign = (swings === 'forward' ? 1 : -1) * fence.outward;
  return {
    pin: add(face, scale(sub(across, face), pin / clear)) as PlanPoint, reach, shut: radians(angleOf(sub(across, face))),
    turn: radians(sign * openAngle(fence, pin, reach)),
  };
}

/** By the law of cosines, from the wall's center: the leaf's far corner comes to the wall's radius less what it keeps clear. */
function openAngle({ faceRadius, radiusSign }: Fence, pin: number, reach: number): number {
  const square = degrees(GATE_PRACTICE.latchedGate.opens);
  if (faceRadius === null || radiusSign < 0) return square;
  const half = latchedHalf();
  const [from, far, corner] = [faceRadius - pin, faceRadius - OFF_FACE, Math.hypot(reach, half)];
  const cosine = (from ** 2 + corner ** 2 - far ** 2) / (2 * from * corner);
  return Math.min(square, Math.acos(Math.max(-1, Math.min(1, cosine))) - Math.atan2(half, reach));
}
