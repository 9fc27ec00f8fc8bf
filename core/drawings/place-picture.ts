/** A small piece of the plan, north as on the plan, about one place. */
import { curvePoint } from '../base/curve.ts';
import { type Vec } from '../base/points.ts';
import { inches } from '../base/quantity.ts';
import { type Rect } from '../drafting/boxes.ts';
import { PENS } from '../drafting/kit.ts';
import { type Stroke } from '../drafting/primitives.ts';
import { lineStroke, toSheet } from '../drafting/strokes.ts';
import { faceCurve, type Layout } from '../layout/index.ts';
import { clipLine } from './clip-line.ts';

/** Plan inches that a picture is wide and high. */
const SPAN = 360;
/** Chords of an arc turn by at most this, radians. */
const CHORD = Math.PI / 30;

/** Every face of a layout as straight pieces of plan, made once for all its pictures. */
export function faceSegments(layout: Layout): readonly (readonly [Vec, Vec])[] {
  const curves = [
    ...layout.fences.flatMap((fence) => fence.spans.map((span) => faceCurve(fence, span.skinFrom, span.skinTo, 0))),
    ...layout.closingPlates.map(({ a, b }) => ({ kind: 'line', a, b }) as const),
  ];
  return curves.flatMap((curve) => {
    const steps = curve.kind === 'line' ? 1 : Math.max(1, Math.ceil(Math.abs(curve.sweep) / CHORD));
    return Array.from({ length: steps }, (_, i): readonly [Vec, Vec] => [curvePoint(curve, i / steps), curvePoint(curve, (i + 1) / steps)]);
  });
}

/** The faces about a place inside a frame on the paper, and a ring round the place itself. */
export function placePicture(segments: readonly (readonly [Vec, Vec])[], at: Vec, frame: Rect): Stroke[] {
  const scale = Math.min(frame.width, frame.height) / SPAN;
  const middle = { x: frame.x + frame.width / 2, y: frame.y + frame.height / 2 };
  const onPaper = (point: Vec): Vec => ({ x: middle.x + (point.x - at.x) * scale, y: middle.y + (point.y - at.y) * scale });
  const steel = segments.flatMap(([a, b]): Stroke[] => {
    const cut = clipLine(onPaper(a), onPaper(b), frame);
    return cut === null ? [] : [lineStroke(PENS.thin, cut[0], cut[1])];
  });
  const { x, y, width, height } = frame;
  const corners: readonly Vec[] = [{ x, y }, { x: x + width, y }, { x: x + width, y: y + height }, { x, y: y + height }];
  return [
    ...corners.map((corner, i) => lineStroke(PENS.rule, corner, corners[(i + 1) % 4]!)),
    ...steel,
    { kind: 'circle', pen: PENS.outline, center: toSheet(middle), radius: inches(frame.width / 12) },
  ];
}
