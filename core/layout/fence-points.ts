/** Reading a fence: any point beside its face, by `u` (inches along the face from the run's start) and the offset outward. */
import { type Curve } from '../base/curve.ts';
import { angleOf, planPoint, sub, type PlanPoint } from '../base/points.ts';
import { inches, radians, type Inches, type Radians } from '../base/quantity.ts';
import { type Fence } from './types.ts';

/** What of a fence its points hang on. */
export type FaceLine = Pick<Fence, 'face' | 'faceRadius' | 'radiusSign' | 'outward'>;

/** The plan point at `u`, `offset` inches outward from the face (negative: on the cattle's side). */
export function facePoint(fence: FaceLine, u: number, offset: number): PlanPoint {
  const { face } = fence;
  if (face.kind === 'arc') {
    const angle = face.start + (Math.sign(face.sweep) * u) / face.radius;
    const radius = radiusAtOffset(fence, offset) ?? 0;
    return planPoint(face.center.x + radius * Math.cos(angle), face.center.y + radius * Math.sin(angle));
  }
  const dx = face.b.x - face.a.x;
  const dy = face.b.y - face.a.y;
  const size = Math.hypot(dx, dy);
  const out = (fence.outward * offset) / size;
  return planPoint(face.a.x + (dx / size) * u - dy * out, face.a.y + (dy / size) * u + dx * out);
}

/** The radius of the arc `offset` inches outward from an arc's face; null on a straight. */
export function radiusAtOffset(fence: FaceLine, offset: number): Inches | null {
  return fence.faceRadius === null ? null : inches(fence.faceRadius + fence.radiusSign * offset);
}

/** Length from u0 to u1, inches, measured along the line `offset` outward from the face. */
export function lengthAtOffset(fence: FaceLine, u0: number, u1: number, offset: number): Inches {
  const radius = radiusAtOffset(fence, offset);
  return inches(radius === null || fence.faceRadius === null ? u1 - u0 : ((u1 - u0) * radius) / fence.faceRadius);
}

/** Which way the cattle walk along the fence at `u`, radians counter-clockwise from +x. */
export function headingAt(fence: FaceLine, u: number): Radians {
  const { face } = fence;
  if (face.kind === 'line') return radians(angleOf(sub(face.b, face.a)));
  const turn = Math.sign(face.sweep);
  return radians(face.start + turn * (u / face.radius + Math.PI / 2));
}

/** The line or arc from u0 to u1, `offset` inches outward from the face. */
export function faceCurve(fence: FaceLine, u0: number, u1: number, offset: number): Curve<PlanPoint> {
  const { face } = fence;
  const radius = radiusAtOffset(fence, offset);
  if (face.kind === 'line' || radius === null) {
    return { kind: 'line', a: facePoint(fence, u0, offset), b: facePoint(fence, u1, offset) };
  }
  const turn = Math.sign(face.sweep);
  return {
    kind: 'arc',
    center: face.center,
    radius,
    start: radians(face.start + (turn * u0) / face.radius),
    sweep: radians((turn * (u1 - u0)) / face.radius),
  };
}
