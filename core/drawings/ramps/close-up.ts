/** The surface enlarged: two steps with their nosings, or two cleats on their planks. */
import { type Vec, viewPoint } from '../../base/points.ts';
import { PENS, printSize } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type CleatFigures, type Ramp, type StepFigures } from '../../layout/index.ts';
import { RAMP_PRACTICE } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { line, rectangle } from './shapes.ts';

/** Null where there is nothing to enlarge: a ramp too short for a whole cleat. */
export function closeUp(units: 'in' | 'mm', ramp: Ramp): Detail | null {
  const { surface } = ramp.figures;
  if (surface.kind === 'stepped') return stepDetail(ramp, surface);
  return surface.cleats.length === 0 ? null : cleatDetail(units, ramp, surface);
}

function stepDetail(ramp: Ramp, { riser, tread }: StepFigures): Detail {
  const steps: Vec[] = [{ x: 0, y: 0 }, { x: 0, y: riser }, { x: tread, y: riser }, { x: tread, y: 2 * riser }, { x: 1.6 * tread, y: 2 * riser }];
  return {
    id: `close-up ${ramp.name}`,
    title: say('drawings.ramp.stepDetail', { ramp: ramp.name }),
    bounds: boundsOf([{ x: -0.3 * tread, y: -riser }, { x: 1.6 * tread, y: 2 * riser }]),
    shapes: [
      ...steps.slice(1).map((to, i) => line(PENS.outline, steps[i]!, to)),
      line(PENS.outline, { x: -0.3 * tread, y: 0 }, { x: 0, y: 0 }),
      line(PENS.center, { x: 0, y: riser }, { x: tread, y: 2 * riser }),
      line(PENS.hidden, { x: tread, y: riser }, { x: tread, y: -riser }),
    ],
    dimensions: (h) => [
      { measure: 'linear', along: 'x', required: true, from: viewPoint(0, riser), to: viewPoint(tread, 2 * riser), offsets: [5, 7, 9, 12].map((by) => by * h) },
      { measure: 'linear', along: 'y', required: true, decimal: true, from: viewPoint(0, 0), to: viewPoint(0, riser), offsets: [4, 6, 8, 11].map((by) => by * h) },
      { measure: 'linear', along: 'y', required: false, decimal: true, from: viewPoint(tread, riser), to: viewPoint(tread, 2 * riser), offsets: [-4, -6, -8].map((by) => by * h) },
    ],
    // Said in the notes too: left out where there is no room.
    callouts: [
      { text: say('drawings.ramp.nosingNote'), target: viewPoint(tread, 2 * riser), piece: null, toward: { x: 0.6, y: 1 }, layer: 'NOTES', optional: true },
      { text: say('drawings.ramp.treadNote'), target: viewPoint(tread * 0.5, riser), piece: null, toward: { x: 0.4, y: -1 }, layer: 'NOTES', optional: true },
    ],
  };
}

/** Seen square to the slope, as it is nailed. */
function cleatDetail(units: 'in' | 'mm', ramp: Ramp, { cleat, gap, cleats }: CleatFigures): Detail {
  const { plank } = RAMP_PRACTICE;
  const shown = cleats.slice(0, 2);
  const end = Math.max(2 * plank.wide, shown[shown.length - 1]! + cleat + 2);
  const planks = Array.from({ length: Math.ceil(end / plank.wide) }, (_, i) => i * plank.wide);
  const shapes: Shape[] = [
    ...planks.flatMap((at) => rectangle(PENS.thin, at, Math.min(at + plank.wide, end), -plank.thick, 0)),
    ...shown.flatMap((at) => rectangle(PENS.outline, at, at + cleat, 0, cleat)),
  ];
  const size = (value: number): string => printSize({ units }, value);
  return {
    id: `close-up ${ramp.name}`,
    title: say('drawings.ramp.cleatDetail', { ramp: ramp.name }),
    bounds: boundsOf([{ x: 0, y: -plank.thick }, { x: end, y: cleat }]),
    shapes,
    dimensions: (h) => [
      { measure: 'linear', along: 'x', required: true, from: viewPoint(0, 0), to: viewPoint(gap, cleat), offsets: [5, 7, 9, 12].map((by) => by * h) },
      { measure: 'linear', along: 'x', required: true, from: viewPoint(gap, 0), to: viewPoint(gap + cleat, 0), offsets: [-6, -8, -10, -13].map((by) => by * h) },
      ...(shown.length < 2 ? [] : [{
        measure: 'linear' as const, along: 'x' as const, required: true, from: viewPoint(gap + cleat, cleat), to: viewPoint(2 * gap + cleat, cleat), offsets: [5, 7, 9, 12].map((by) => by * h),
      }]),
      { measure: 'linear', along: 'y', required: true, from: viewPoint(0, -plank.thick), to: viewPoint(0, 0), offsets: [4, 6, 8, 11].map((by) => by * h) },
    ],
    // Said in the notes too: left out where there is no room.
    callouts: [
      { text: say('drawings.ramp.cleatNote', { size: size(cleat) }), target: viewPoint(gap + cleat / 2, cleat / 2), piece: null, toward: { x: 0.6, y: 1 }, layer: 'NOTES', optional: true },
      { text: say('drawings.ramp.plankNote'), target: viewPoint(end * 0.7, -plank.thick / 2), piece: null, toward: { x: 0.4, y: -1 }, layer: 'NOTES', optional: true },
    ],
  };
}
