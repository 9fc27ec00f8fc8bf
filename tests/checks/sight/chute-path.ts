import { inches, radians } from '../../../core/base/quantity.ts';
import { planPoint, type PlanPoint } from '../../../core/base/points.ts';
import { type Curve } from '../../../core/base/curve.ts';
import { type RunBrief } from '../../../core/brief/types.ts';
import { type Run } from '../../../core/layout/index.ts';

/** Chute runs from the origin along +y, set out by turtle steps of this file's own, for tests of sight that need no layout. */
export function chutePath(width: number, briefs: readonly RunBrief[]): readonly Run[] {
  let x = 0;
  let y = 0;
  let heading = Math.PI / 2;
  let station = 0;
  return briefs.map((brief, index): Run => {
    const name = `chute-${String(index + 1)}`;
    const from = inches(station);
    const start = heading;
    if (brief.kind === 'straight') {
      const line = (offset: number): Curve<PlanPoint> => {
        const a = planPoint(x - offset * Math.sin(start), y + offset * Math.cos(start));
        return { kind: 'line', a, b: planPoint(a.x + brief.length * Math.cos(start), a.y + brief.length * Math.sin(start)) };
      };
      const faces = { left: line(width / 2), right: line(-width / 2) };
      const path = line(0);
      x += brief.length * Math.cos(heading);
      y += brief.length * Math.sin(heading);
      station += brief.length;
      return { name, kind: 'straight', from, length: brief.length, insideRadius: null, centerlineRadius: null, angle: null, hand: null,
        width: inches(width), path, faces, headings: [radians(start), radians(start)] };
    }
    const turn = brief.hand === 'left' ? 1 : -1;
    const rc = brief.insideRadius + width / 2;
    const center = planPoint(x - turn * rc * Math.sin(start), y + turn * rc * Math.cos(start));
    const arc = (offset: number): Curve<PlanPoint> => ({
      kind: 'arc', center, radius: inches(rc - turn * offset), start: radians(start - (turn * Math.PI) / 2), sweep: radians(turn * brief.angle),
    });
    heading += turn * brief.angle;
    x = center.x + rc * Math.cos(heading - (turn * Math.PI) / 2);
    y = center.y + rc * Math.sin(heading - (turn * Math.PI) / 2);
    station += rc * brief.angle;
    return { name, kind: 'arc', from, length: inches(rc * brief.angle), insideRadius: brief.insideRadius, centerlineRadius: inches(rc),
      angle: brief.angle, hand: brief.hand, width: inches(width), path: arc(0), faces: { left: arc(width / 2), right: arc(-width / 2) },
      headings: [radians(start), radians(heading)] };
  });
}
