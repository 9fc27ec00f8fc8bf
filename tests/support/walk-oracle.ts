/** Plain ways to measure a plan, sharing no code with the core's set-out. */
import { type Curve } from '../../core/base/curve.ts';
import { type Vec } from '../../core/base/points.ts';
import { type RunBrief } from '../../core/brief/types.ts';

/** How far a point is from a line or an arc carried on past its ends, found by trying points of it ever closer. */
export function distanceToCurve(curve: Curve<Vec>, p: Vec): number {
  const at = (t: number): Vec => {
    if (curve.kind === 'line') return { x: curve.a.x + (curve.b.x - curve.a.x) * t, y: curve.a.y + (curve.b.y - curve.a.y) * t };
    const angle = curve.start + curve.sweep * t;
    return { x: curve.center.x + Math.cos(angle) * curve.radius, y: curve.center.y + Math.sin(angle) * curve.radius };
  };
  const away = (t: number): number => Math.hypot(at(t).x - p.x, at(t).y - p.y);
  let best = -4;
  for (let t = -4; t <= 5; t += 1 / 128) if (away(t) < away(best)) best = t;
  for (let step = 1 / 128; step > 1e-13; step /= 2) {
    if (away(best - step) < away(best)) best -= step;
    else if (away(best + step) < away(best)) best += step;
  }
  return away(best);
}

/** Where a walk along a run's centerline ends, by small straight steps of the heading (midpoint rule). */
export function walk(run: RunBrief, width: number, from: Vec, heading: number, steps = 20000): { at: Vec; heading: number } {
  const length = run.kind === 'straight' ? run.length : (run.insideRadius + width / 2) * run.angle;
  const turn = run.kind === 'straight' ? 0 : run.angle * (run.hand === 'left' ? 1 : -1);
  let { x, y } = from;
  for (let i = 0; i < steps; i++) {
    const way = heading + (turn * (i + 0.5)) / steps;
    x += (Math.cos(way) * length) / steps;
    y += (Math.sin(way) * length) / steps;
  }
  return { at: { x, y }, heading: heading + turn };
}
