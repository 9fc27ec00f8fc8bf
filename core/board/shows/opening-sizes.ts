import { curvePart } from '../../base/curve.ts';
import { viewPoint } from '../../base/points.ts';
import { radians } from '../../base/quantity.ts';
import { countedLine } from '../counted-line.ts';
import { type Scene, type SizeShown } from './show.ts';

/** Of the opening that is dragged: how far along its run it stands, from the run's start. */
export function openingSizes({ input: { brief, layout }, h, options }: Scene): readonly SizeShown[] {
  const opening = brief.openings.find((one) => `${one.path}.at` === options.dragged);
  const stands = layout.openings.find((one) => one.path === opening?.path);
  if (opening === undefined || stands === undefined) return [];
  const { line, share } = countedLine(layout, opening, stands);
  if (!(share > 0)) return [];
  const offsets = [4, -4, 6, -6, 9].map((reach) => reach * h);
  const part = curvePart(line, 0, share);
  const path = `${opening.path}.at`;
  if (part.kind === 'line') {
    return [{ path, spec: { measure: 'aligned', required: true, from: viewPoint(part.a.x, part.a.y), to: viewPoint(part.b.x, part.b.y), offsets } }];
  }
  const { center, radius, start, sweep } = part;
  return [{
    path,
    spec: { measure: 'arc', required: true, center: viewPoint(center.x, center.y), radius, from: radians(Math.min(start, start + sweep)), to: radians(Math.max(start, start + sweep)), offsets },
  }];
}
