/** The spring that shuts a man gate, from the front: an eye on the jamb post's back and one on a bar of the leaf; and an eye as it is cut. */
import { contourCurves } from '../../base/flat-curves.ts';
import { viewPoint } from '../../base/points.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { gateSection, gateSheet } from '../../brief/gate-steel.ts';
import { type Brief } from '../../brief/types.ts';
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Fence } from '../../layout/index.ts';
import { barrelWall, hingeWeld, latchWeld } from '../../schedules/index.ts';
import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { circle, type GatePiece, rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

const { springEye } = GATE_PRACTICE;
/** Of the spring over the lower hinge, as drawn: it stands higher than a detail has room for. */
const UP = 4;

/** x from the hinges' pin along the leaf, y from the lower hinge's middle. */
export function springDetail(brief: Brief, fence: Fence, mark: string, pieces: readonly GatePiece[]): Detail {
  const { hinge, hingeTab, manGate } = GATE_PRACTICE;
  const [frame, bar] = [gateSection(manGate.frame), gateSection(manGate.bar)];
  const post = fence.brief.post.along;
  const barrel = hinge.barrel / 2;
  const half = hinge.length / 2;
  const up = half + UP;
  const top = up + 3;
  const [jamb = -barrel - post / 2, eye = barrel + frame.across + 2] = pieces
    .flatMap(({ place: { part, outline } }) => (part === 'eye' && outline.kind === 'plate' ? [(outline.left + outline.right) / 2] : [])).sort((a, b) => a - b);
  const tabbed = pieces.some(({ place }) => place.part === 'tab');
  const right = eye + springEye.wide;
  const seat = tabbed ? inches(Math.min(hingeTab.thickness, barrelWall(hinge.barrel))) : fence.brief.post.wall;
  const eyeAt = (x: number): Shape[] => rectangle(PENS.outline, x - springEye.wide / 2, x + springEye.wide / 2, up - springEye.thickness / 2, up + springEye.thickness / 2);
  return {
    id: `spring ${fence.run} ${fence.side}`,
    title: say('drawings.detail.spring', { mark }),
    bounds: boundsOf([{ x: -barrel - post, y: -half - 2 }, { x: right, y: top }]),
    shapes: [
      ...[-barrel - post, -barrel].map((x) => straight(PENS.outline, x, -half - 2, x, top)),
      ...[barrel, barrel + frame.across].map((x) => straight(PENS.outline, x, -half - 2, x, top)),
      ...[-1, 1].map((way) => straight(PENS.outline, barrel + frame.across, up + (way * bar.across) / 2, right, up + (way * bar.across) / 2)),
      ...rectangle(PENS.outline, -barrel, barrel, -half, half),
      ...(tabbed ? rectangle(PENS.outline, -barrel - hingeTab.thickness, -barrel, -half, half) : []),
      straight(PENS.center, 0, -half - 1, 0, half + 1),
      ...eyeAt(jamb), ...eyeAt(eye),
      straight(PENS.center, jamb, up, eye, up),
    ],
    dimensions: (h) => [
      size(h, 'y', [barrel, -half], [barrel, half], 1),
      size(h, 'x', [-barrel, -half], [barrel, -half], -1),
    ],
    callouts: [
      word('drawings.gate.jamb', [-barrel - post * 0.8, -half - 1], [-1, -0.4]), word('drawings.gate.spring', [eye, up], [0.6, 1]), word('drawings.gate.stile', [barrel + frame.across / 2, -half - 1], [1, -0.5]),
      ...(tabbed ? [word('drawings.gate.tab', [-barrel - hingeTab.thickness / 2, -half * 0.5], [-1, -0.2])] : []),
    ],
    welds: [
      weldAt(hingeWeld(brief, 'hinge-jamb', seat), [-barrel, half * 0.6], [-1, 0.6]),
      weldAt(hingeWeld(brief, 'hinge-leaf', frame.wall), [barrel, half * 0.6], [1, -0.5]),
      weldAt(latchWeld(brief, 'spring-eye', inches(Math.min(springEye.thickness, frame.wall, fence.brief.post.wall))), [eye + springEye.wide / 2, up], [1, 0.7]),
    ],
  };
}

/** An eye flat, as it is cut. Null where the gate has none. */
export function eyeDetail(brief: Brief, pieces: readonly GatePiece[]): Detail | null {
  const piece = pieces.find(({ place }) => place.part === 'eye')?.piece;
  const [hole] = piece?.flat?.holes ?? [];
  if (piece?.flat === undefined || hole?.kind !== 'circle') return null;
  const { long, wide } = springEye;
  const { center, radius } = hole;
  return {
    id: `eye ${piece.mark}`,
    title: say('drawings.detail.eye', { mark: piece.mark, plate: gateSheet(piece.section).name, hole: printLength(inches(2 * radius), brief.units, 'inches') }),
    bounds: boundsOf([{ x: 0, y: 0 }, { x: long, y: wide }]),
    shapes: [
      ...contourCurves(piece.flat.outer).map((curve): Shape => ({
        kind: 'curve', pen: PENS.outline,
        curve: curve.kind === 'line' ? { kind: 'line', a: viewPoint(curve.a.x, curve.a.y), b: viewPoint(curve.b.x, curve.b.y) } : { ...curve, center: viewPoint(curve.center.x, curve.center.y) },
      })),
      circle(PENS.outline, center.x, center.y, radius),
    ],
    dimensions: (h) => [
      size(h, 'x', [0, 0], [long, 0], -1), size(h, 'y', [0, 0], [0, wide], -1), size(h, 'x', [0, wide], [center.x, wide], 1),
    ],
    callouts: [],
  };
}
