/** A ramp cut along its middle: steps or cleats, dock, bumper; every rise and run from the foot. */
import { radians } from '../../base/quantity.ts';
import { type Vec, sheetPoint, viewPoint } from '../../base/points.ts';
import { PENS, measureText, printSize } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Running, type Shape, type View } from '../../drafting/model.ts';
import { runningDepth } from '../../drafting/running.ts';
import { footHeight } from '../../drafting/view.ts';
import { type Ramp } from '../../layout/index.ts';
import { RAMP_PRACTICE, type Piece, stepCorners } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { printAngle } from '../../units/index.ts';
import { type Block } from '../flow.ts';
import { type Page } from '../input.ts';
import { type Scale } from '../scales.ts';
import { line, outline } from './shapes.ts';

const { plank, bumper } = RAMP_PRACTICE;

/** Positions along a profile that are dimensioned from the foot, and heights. */
function places({ figures, length }: Ramp): { readonly along: readonly Vec[]; readonly up: readonly Vec[] } {
  const { surface, run, height } = figures;
  const end = length - run > 1e-6 ? [{ x: length, y: 0 }] : [];
  if (surface.kind === 'cleated') return { along: [{ x: run, y: 0 }, ...end], up: [] };
  const nosings = Array.from({ length: surface.risers }, (_, i) => ({ x: i * surface.tread, y: i === surface.risers - 1 ? height : (i + 1) * surface.riser }));
  return { along: [...nosings.slice(1), ...end], up: nosings };
}

/** Paper that a profile takes round its steel at a scale: left, right, below, above. */
function margins(page: Page, ramp: Ramp, scale: number): { readonly left: number; readonly right: number; readonly below: number; readonly above: number } {
  const { kit } = page;
  const { along, up } = places(ramp);
  const longest = (values: readonly number[]): number => Math.max(0, ...values.map((value) => measureText(kit, printSize(kit, value))));
  const row = kit.up + kit.down + 2 * kit.clear + 0.01;
  const left = up.length === 0 ? 8 * kit.h : runningDepth(kit, 4 * kit.h, longest(up.map(({ y }) => y))) + 0.05;
  const tall = (up.length + 1) * row - ramp.figures.height * scale - kit.up;
  const below = Math.max(runningDepth(kit, 3 * kit.h, longest(along.map(({ x }) => x))) + 0.02, Math.min(tall, 0.5 * tall + 6 * kit.h));
  return { left, right: 16 * kit.h, below, above: Math.max(15 * kit.h, tall - below + 2 * kit.h) };
}

export function profileSize(page: Page, ramp: Ramp, { scale, text }: Scale): { readonly width: number; readonly height: number } {
  const { kit } = page;
  const { left, right, below, above } = margins(page, ramp, scale);
  const { along } = places(ramp);
  const row = kit.up + kit.down + 2 * kit.clear + 0.01;
  const width = Math.max(left + (ramp.length + bumper.thick) * scale + right, left + (along.length + 2) * row, 30 * kit.h);
  const foot = footHeight(kit, { title: say('drawings.ramp.profile', { ramp: ramp.name }), scaleText: text }, page.block, width);
  return { width, height: foot + below + ramp.figures.height * scale + above };
}

export function profileBlock(page: Page, ramp: Ramp, pieces: readonly Piece[], scale: Scale): Block {
  const { kit } = page;
  const size = profileSize(page, ramp, scale);
  const { left, below, above } = margins(page, ramp, scale.scale);
  const title = say('drawings.ramp.profile', { ramp: ramp.name });
  const foot = footHeight(kit, { title, scaleText: scale.text }, page.block, size.width);
  const { along, up } = places(ramp);
  const runnings: Running[] = [
    { along: 'x', datum: viewPoint(0, 0), at: along.map(({ x }) => viewPoint(x, 0)), line: 3 * kit.h, limits: [kit.up, size.width - left - 0.02] },
    ...(up.length === 0 ? [] : [{
      along: 'y' as const, datum: viewPoint(0, 0), at: up.map(({ x, y }) => viewPoint(x, y)), line: 4 * kit.h,
      limits: [below - 0.02, ramp.figures.height * scale.scale + above - 0.02] as const,
    }]),
  ];
  return {
    ...size,
    label: ramp.name,
    place: (x, y) => {
      const view: View = {
        id: `profile ${ramp.name}`,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at: sheetPoint(x + left, y + foot + below),
        box: { x, y, ...size },
        shapes: shapesOf(ramp, pieces),
        dimensions: dimensionsOf(ramp, kit.h),
        runnings,
        bands: [],
        callouts: calloutsOf(ramp, pieces),
      };
      return { views: [view] };
    },
  };
}

function shapesOf(ramp: Ramp, pieces: readonly Piece[]): Shape[] {
  const { figures, length } = ramp;
  const { height, run, foot } = figures;
  const block = pieces.find((piece) => piece.kind === 'bumper');
  const tall = Math.min(bumper.tall, height);
  return [
    line(PENS.thin, { x: -10, y: 0 }, { x: length + 24, y: 0 }),
    ...(figures.surface.kind === 'stepped' ? [line(PENS.center, { x: 0, y: foot }, { x: run, y: height }), ...stepShapes(ramp), ...formShapes(ramp, pieces)] : deckShapes(ramp, pieces)),
    ...outline(PENS.outline, [
      { x: length, y: height - tall }, { x: length + bumper.thick, y: height - tall }, { x: length + bumper.thick, y: height }, { x: length, y: height },
    ], block?.key),
  ];
}

function stepShapes({ figures, length }: Ramp): Shape[] {
  const { surface, height, run } = figures;
  if (surface.kind !== 'stepped') return [];
  const corners: Vec[] = [{ x: 0, y: 0 }];
  for (let i = 0; i < surface.risers; i++) {
    const top = i === surface.risers - 1 ? height : (i + 1) * surface.riser;
    corners.push({ x: i * surface.tread, y: top });
    if (i < surface.risers - 1) corners.push({ x: (i + 1) * surface.tread, y: top });
  }
  const end = Math.max(length, run + 1e-9);
  return outline(PENS.outline, [...corners, ...(length - run > 1e-6 ? [{ x: end, y: height }] : []), { x: end, y: 0 }]);
}

/** The template of the forms where it is laid against the lowest steps. */
function formShapes({ figures: { surface } }: Ramp, pieces: readonly Piece[]): Shape[] {
  if (surface.kind !== 'stepped') return [];
  return pieces.flatMap(({ key, place }) => (place.kind === 'form' ? outline(PENS.hidden, stepCorners(place.steps, surface.riser, surface.tread), key) : []));
}

/** Surface and underside of the planks, the dock's too; the cleats on them. */
function deckShapes({ figures, length }: Ramp, pieces: readonly Piece[]): Shape[] {
  const { surface, height, run, slope } = figures;
  if (surface.kind !== 'cleated') return [];
  const along = { x: Math.cos(slope), y: Math.sin(slope) };
  const out = { x: -Math.sin(slope), y: Math.cos(slope) };
  const at = (up: number, off: number): Vec => ({ x: along.x * up + out.x * off, y: along.y * up + out.y * off });
  // The underside of the slope meets that of the dock on the half angle.
  const under = { x: run + plank.thick * Math.tan(slope / 2), y: height - plank.thick };
  const foot = { x: plank.thick / Math.sin(slope), y: 0 };
  const dock = length - run > 1e-6;
  const sloping = foot.x < under.x ? [{ x: 0, y: 0 }, { x: run, y: height }, under, foot] : [{ x: 0, y: 0 }, { x: run, y: height }, { x: run, y: 0 }];
  const cleats = pieces.flatMap((piece) => (piece.place.kind === 'cleat' ? [{ key: piece.key, up: piece.place.up }] : []));
  return [
    ...outline(PENS.outline, sloping),
    ...(dock ? outline(PENS.outline, [{ x: run, y: height }, { x: length, y: height }, { x: length, y: height - plank.thick }, under]) : []),
    ...cleats.flatMap(({ key, up }) => outline(PENS.thin, [at(up, 0), at(up, surface.cleat), at(up + surface.cleat, surface.cleat), at(up + surface.cleat, 0)], key)),
  ];
}

function dimensionsOf({ figures, length }: Ramp, h: number): DimensionSpec[] {
  const { height, run, slope, foot, dockLength } = figures;
  const out = (list: readonly number[]): number[] => list.map((reach) => reach * h);
  const start = viewPoint(0, foot);
  const edge = viewPoint(run, height);
  // The dock's own size first: it has the least choice of a place.
  const specs: DimensionSpec[] = [
    ...(dockLength > 1e-6 ? [{ measure: 'linear' as const, along: 'x' as const, required: true, from: edge, to: viewPoint(length, height), offsets: out([4, 6, 8, 11, -4, -7]) }] : []),
    { measure: 'aligned', required: true, from: start, to: edge, offsets: out([4, 6, 8, 11, 3, 14, -4]) },
    { measure: 'linear', along: 'y', required: true, from: viewPoint(length, 0), to: viewPoint(length + bumper.thick, height), offsets: out([-4, -6, -8, -11]) },
    { measure: 'angle', required: true, center: start, from: radians(0), to: slope, offsets: out([28, 20, 38, 14, 50, 64, 10, 80]) },
    { measure: 'linear', along: 'x', required: false, prefix: say('drawings.ramp.bumperGap'), from: viewPoint(length, height), to: viewPoint(length + bumper.thick, height), offsets: out([4, 6, 8]) },
  ];
  return specs;
}

function calloutsOf(ramp: Ramp, pieces: readonly Piece[]): CalloutSpec[] {
  const { figures, length } = ramp;
  const { run, height, slope, foot } = figures;
  const block = pieces.find((piece) => piece.kind === 'bumper');
  const tall = Math.min(bumper.tall, height);
  return [
    ...(block === undefined ? [] : [{
      text: block.mark, target: viewPoint(length + bumper.thick / 2, height - tall / 2), piece: block.key, toward: { x: 1, y: 0.4 }, layer: 'MARKS' as const,
    }]),
    ...pieces.flatMap(({ key, mark, place, length, flatHeight }): CalloutSpec[] => (place.kind !== 'form' ? [] : [{
      text: mark, target: viewPoint(length * 0.75, flatHeight! * 0.25), piece: key, toward: { x: 1, y: 0.4 }, layer: 'MARKS',
    }])),
    { text: say('drawings.ramp.slope', { slope: printAngle(slope) }), target: viewPoint(run * 0.4, foot + (height - foot) * 0.4), piece: null, toward: { x: -0.6, y: 1 }, layer: 'NOTES' },
  ];
}
