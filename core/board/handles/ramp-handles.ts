/** Handles of the ramps: the dock's length; of one that has a place, its width, where its low end lies, and its heading. */
import { planPoint, unitAt, type PlanPoint } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout, type Ramp } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function rampHandles(_: Brief, layout: Layout): readonly Handle[] {
  return layout.ramps.flatMap((ramp) => [dockHandle(ramp), ...(ramp.brief.at === null ? [] : placeHandles(ramp, ramp.brief.at))]);
}

/** The way up the ramp. */
const upOf = ({ brief, heading }: Ramp): number => (brief.kind === 'load' ? heading : heading + Math.PI);

const pointOn = (ramp: Ramp, up: number, across: number): PlanPoint => {
  const [along, left] = [unitAt(upOf(ramp)), unitAt(upOf(ramp) + Math.PI / 2)];
  return planPoint(ramp.at.x + along.x * up + left.x * across, ramp.at.y + along.y * up + left.y * across);
};

function dockHandle(ramp: Ramp): Handle {
  const path = `${ramp.brief.path}.dockLength`;
  return {
    id: path, path, label: say('board.handle.dockLength', { ramp: ramp.name }), figure: 'length', run: ramp.name,
    at: pointOn(ramp, ramp.length, 0), grows: upOf(ramp),
    drag: { kind: 'along', origin: pointOn(ramp, ramp.figures.run, 0), along: upOf(ramp), factor: 1, offset: 0 },
    value: ramp.brief.dockLength, ...rangeOf('dockLength'),
  };
}

function placeHandles(ramp: Ramp, at: PlanPoint): readonly Handle[] {
  const { path, width, heading } = ramp.brief;
  const half = width / 2;
  const across = upOf(ramp) + Math.PI / 2;
  const middle = ramp.figures.run / 2;
  const corners = [pointOn(ramp, 0, half), pointOn(ramp, 0, -half)] as const;
  const common = { figure: 'length', run: ramp.name } as const;
  const handles: Handle[] = [
    {
      ...common, id: `${path}.width`, path: `${path}.width`, label: say('board.handle.rampWidth', { ramp: ramp.name }), at: pointOn(ramp, middle, half), grows: across,
      // Both faces move: the figure is twice what one does.
      drag: { kind: 'along', origin: pointOn(ramp, middle, 0), along: across, factor: 2, offset: 0 }, value: width, ...rangeOf('rampWidth'),
    },
    {
      ...common, id: `${path}.at[0]`, path: `${path}.at[0]`, label: say('board.handle.rampX', { ramp: ramp.name }), at: corners[0], grows: 0,
      drag: { kind: 'along', origin: corners[0], along: 0, factor: 1, offset: at.x }, value: at.x, ...rangeOf('plan'),
    },
    {
      ...common, id: `${path}.at[1]`, path: `${path}.at[1]`, label: say('board.handle.rampY', { ramp: ramp.name }), at: corners[1], grows: Math.PI / 2,
      drag: { kind: 'along', origin: corners[1], along: Math.PI / 2, factor: 1, offset: at.y }, value: at.y, ...rangeOf('plan'),
    },
  ];
  if (heading === null) return handles;
  const end = pointOn(ramp, ramp.length, 0);
  return [...handles, {
    id: `${path}.heading`, path: `${path}.heading`, label: say('board.handle.rampHeading', { ramp: ramp.name }), figure: 'angle', run: ramp.name,
    at: end, grows: upOf(ramp) + Math.PI / 2, drag: { kind: 'round', center: at, from: upOf(ramp) - heading, factor: 1, offset: 0 }, value: heading, ...rangeOf('heading'),
  }];
}
