import { type Curve } from '../../base/curve.ts';
import { cross, dot, sub, type Vec } from '../../base/points.ts';
import { arcFraction } from './arc-fraction.ts';

/** Where a ray meets a curve: `t` inches from the eye, `fraction` (0 to 1) along the curve. */
export interface Hit {
  readonly t: number;
  readonly fraction: number;
}

/**
 * Every place where a ray from `eye` in the unit direction `way` meets a curve ahead of it, exactly: a line as a line, an arc as
 * an arc. A ray that only touches an arc meets it once; one that runs along a line does not meet it.
 */
export function hits(eye: Vec, way: Vec, curve: Curve<Vec>): readonly Hit[] {
  if (curve.kind === 'line') {
    const along = sub(curve.b, curve.a);
    const turn = cross(way, along);
    if (turn === 0) return [];
    const reach = sub(curve.a, eye);
    const t = cross(reach, along) / turn;
    const fraction = cross(reach, way) / turn;
    return t > 0 && fraction >= 0 && fraction <= 1 ? [{ t, fraction }] : [];
  }
  const toCenter = sub(curve.center, eye);
  const nearest = dot(toCenter, way);
  const miss = cross(way, toCenter);
  const half2 = curve.radius ** 2 - miss ** 2;
  if (half2 < 0) return [];
  const half = Math.sqrt(half2);
  const found: Hit[] = [];
  for (const t of half === 0 ? [nearest] : [nearest - half, nearest + half]) {
    if (t <= 0) continue;
    const fraction = arcFraction(curve, { x: eye.x + way.x * t, y: eye.y + way.y * t });
    if (fraction !== null) found.push({ t, fraction });
  }
  return found;
}
