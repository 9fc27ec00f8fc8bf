/** A section across a ramp's dock, looking up: body or planks, both fences, their posts in the ground. */
import { inches } from '../../base/quantity.ts';
import { viewPoint } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Shape } from '../../drafting/model.ts';
import { type Fence, type Ramp } from '../../layout/index.ts';
import { RAMP_PRACTICE } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { type DrawInput } from '../input.ts';
import { line, rectangle } from './shapes.ts';

/** Looking up the ramp a loading one's left fence stands on the left; cattle come down an unloading one. */
const onLeft = (ramp: Ramp, fence: Fence): boolean => (fence.side === 'left') === (ramp.brief.kind === 'load');

export function acrossDetail(input: DrawInput, ramp: Ramp): Detail {
  const { height } = ramp.figures;
  const half = ramp.brief.width / 2;
  const { depth, diameter } = input.brief.footings;
  const fences = input.layout.fences.filter((fence) => fence.run === ramp.name);
  const reach = half + Math.max(...fences.map(({ section }) => section.k)) + diameter / 2;
  const top = height + Math.max(...fences.map(({ brief }) => brief.height));
  const body = ramp.brief.surface.kind === 'stepped' ? 0 : height - RAMP_PRACTICE.plank.thick;
  return {
    id: `across ${ramp.name}`,
    title: say('drawings.ramp.across', { ramp: ramp.name }),
    bounds: boundsOf([{ x: -reach, y: -depth }, { x: reach, y: top }]),
    shapes: [
      line(PENS.thin, { x: -reach - 8, y: 0 }, { x: reach + 8, y: 0 }),
      ...rectangle(PENS.outline, -half, half, body, height),
      line(PENS.center, { x: 0, y: -6 }, { x: 0, y: height + 12 }),
      ...fences.flatMap((fence) => fenceShapes(input, ramp, fence)),
    ],
    dimensions: (h) => dimensionsOf(input, ramp, fences, reach, h),
    callouts: calloutsOf(ramp, fences, body),
  };
}

function fenceShapes(input: DrawInput, ramp: Ramp, fence: Fence): Shape[] {
  const { section, brief } = fence;
  const { depth, diameter } = input.brief.footings;
  const { height } = ramp.figures;
  const way = onLeft(ramp, fence) ? -1 : 1;
  const out = (offset: number): number => way * (ramp.brief.width / 2 + offset);
  const between = (a: number, b: number): readonly [number, number] => (out(a) < out(b) ? [out(a), out(b)] : [out(b), out(a)]);
  const [p0, p1] = between(section.k - section.D / 2, section.k + section.D / 2);
  const [h0, h1] = between(section.k - diameter / 2, section.k + diameter / 2);
  const [s0, s1] = between(0, section.t);
  const solid = brief.sheet !== null && brief.solidTo > brief.solidFrom;
  return [
    ...rectangle(PENS.outline, p0, p1, -depth, height + brief.height),
    ...rectangle(PENS.hidden, h0, h1, -depth, 0),
    ...(solid ? rectangle(PENS.outline, s0, s1, height + brief.solidFrom, height + brief.solidTo) : []),
    ...section.rows.flatMap((row): Shape[] => {
      const [r0, r1] = between(section.kr - section.d / 2, section.kr + section.d / 2);
      if (brief.rail.shape === 'round') return [{ kind: 'circle', center: viewPoint(out(section.kr), height + row), radius: inches(section.d / 2), pen: PENS.outline }];
      return rectangle(PENS.outline, r0, r1, height + row - section.railHeight / 2, height + row + section.railHeight / 2);
    }),
  ];
}

function dimensionsOf(input: DrawInput, ramp: Ramp, fences: readonly Fence[], reach: number, h: number): DimensionSpec[] {
  const { height } = ramp.figures;
  const half = ramp.brief.width / 2;
  const { depth } = input.brief.footings;
  const right = fences.find((fence) => !onLeft(ramp, fence))!;
  const left = fences.find((fence) => onLeft(ramp, fence))!;
  const out = (list: readonly number[]): number[] => list.map((by) => by * h);
  const far = [4, 6, 8, 10, 12];
  const back = (fence: Fence): number => half + fence.section.k + fence.section.D / 2;
  const specs: DimensionSpec[] = [
    { measure: 'linear', along: 'x', required: true, from: viewPoint(-half, height), to: viewPoint(half, height), offsets: out([4, 6, 8, 11, -4, -7]) },
    { measure: 'linear', along: 'y', required: true, from: viewPoint(reach, 0), to: viewPoint(half, height), offsets: out(far.map((by) => -by)) },
    { measure: 'linear', along: 'y', required: true, from: viewPoint(half, height), to: viewPoint(back(right), height + right.brief.height), offsets: out(far.map((by) => -by)) },
    { measure: 'linear', along: 'y', required: true, from: viewPoint(reach, -depth), to: viewPoint(reach, 0), offsets: out(far.map((by) => -by)) },
  ];
  if (Math.abs(left.brief.height - right.brief.height) > 1e-6) {
    specs.push({ measure: 'linear', along: 'y', required: true, from: viewPoint(-half, height), to: viewPoint(-back(left), height + left.brief.height), offsets: out(far) });
  }
  return specs;
}

function calloutsOf(ramp: Ramp, fences: readonly Fence[], body: number): CalloutSpec[] {
  const { height } = ramp.figures;
  const inside = say(ramp.brief.surface.kind === 'stepped' ? 'drawings.ramp.concrete' : 'drawings.ramp.planks');
  return [
    { text: inside, target: viewPoint(-ramp.brief.width / 4, (body + height) / 2), piece: null, toward: { x: -0.2, y: -1 }, layer: 'NOTES' },
    ...fences.map((fence): CalloutSpec => ({
      text: say('drawings.fence.name', { run: fence.run, side: fence.side }),
      target: viewPoint((onLeft(ramp, fence) ? -1 : 1) * (ramp.brief.width / 2 + fence.section.k), height + fence.brief.height),
      piece: null, toward: { x: onLeft(ramp, fence) ? -0.5 : 0.5, y: 1 }, layer: 'NOTES',
    })),
  ];
}
