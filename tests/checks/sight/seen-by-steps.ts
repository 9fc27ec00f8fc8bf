import { type RunBrief } from '../../../core/brief/types.ts';

/**
 * Seen length by brute force: the chute is walked in steps of 1/4 in, the line from the eye to every fourth of them is itself walked in
 * such steps, and a step of it that stands further from the centerline's own steps than half the width is a wall. Good to about 1 in.
 */
export function seenBySteps(width: number, briefs: readonly RunBrief[]): number {
  const step = 0.25;
  const line: { x: number; y: number }[] = [{ x: 0, y: 0 }];
  let x = 0;
  let y = 0;
  let heading = Math.PI / 2;
  for (const brief of briefs) {
    const turn = brief.kind === 'straight' ? 0 : brief.hand === 'left' ? 1 : -1;
    const length = brief.kind === 'straight' ? brief.length : (brief.insideRadius + width / 2) * brief.angle;
    const curvature = brief.kind === 'straight' ? 0 : turn / (brief.insideRadius + width / 2);
    const count = Math.ceil(length / step);
    const part = length / count;
    for (let i = 0; i < count; i++) {
      const middle = heading + (curvature * part) / 2;
      x += part * Math.cos(middle);
      y += part * Math.sin(middle);
      heading += curvature * part;
      line.push({ x, y });
    }
  }
  let seen = 0;
  for (const [index, to] of line.entries()) {
    if (index === 0 || index % 4 !== 0) continue;
    const before = line[index - 4]!;
    const reach = Math.hypot(to.x, to.y);
    const parts = Math.max(1, Math.ceil(reach / step));
    let nearest = 0;
    for (let k = 0; k <= parts; k++) {
      const p = { x: (to.x * k) / parts, y: (to.y * k) / parts };
      while (nearest < index && apart(line[nearest + 1]!, p) <= apart(line[nearest]!, p)) nearest++;
      if (apart(line[nearest]!, p) > width / 2 + step / 16) return seen;
    }
    seen += apart(before, to);
  }
  return seen;
}

const apart = (a: { x: number; y: number }, b: { x: number; y: number }): number => Math.hypot(a.x - b.x, a.y - b.y);
