/** Handles of the ramps: the dock's length; of one that has a place, its width, where its low end lies, and its heading. */
import { type PlanPoint } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout, type Ramp } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { rampPoint, upOf } from '../ramp-points.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function rampHandles(_: Brief, layout: Layout): readonly Handle[] {
  return layout.ramps.flatMap((ramp) => [dockHandle(ramp), ...(ramp.brief.at === null ? [] : placeHandles(ramp, ramp.brief.at))]);
}

function dockHandle(ramp: Ramp): Handle {
  const path = `${ramp.brief.path}.dockLength`;
  return {
    id: path, path, label: say('board.handle.dockLength', { ramp: ramp.name }), figure: 'length', run: ramp.name,
    at: rampPoint(ramp, ramp.length, 0), grows: upOf(ramp),
    drag: { kind: 'along', origin: rampPoint(ramp, ramp.figures.run, 0), along: upOf(ramp), factor: 1, offset: 0 },
    value: ramp.brief.dockLength, ...rangeOf('dockLength'),
  };
}

function placeHandles(ramp: Ramp, at: PlanPoint): readonly Handle[] {
  const { path, width, heading } = ramp.brief;
  const half = width / 2;
  const across = upOf(ramp) + Math.PI / 2;
  const middle = ramp.figures.run / 2;
  const corners = [rampPoint(ramp, 0, half), rampPoint(ramp, 0, -half)] as const;
  const common = { figure: 'length', run: ramp.name } as const;
  const handles: Handle[] = [
    {
      ...common, id: `${path}.width`, path: `${path}.width`, label: say('board.handle.rampWidth', { ramp: ramp.name }), at: rampPoint(ramp, middle, half), grows: across,
      // Both faces move: the figure is twice what one does.
      drag: { kind: 'along', origin: rampPoint(ramp, middle, 0), along: across, factor: 2, offset: 0 }, value: width, ...rangeOf('rampWidth'),
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
  const end = rampPoint(ramp, ramp.length, 0);
  return [...handles, {
    id: `${path}.heading`, path: `${path}.heading`, label: say('board.handle.rampHeading', { ramp: ramp.name }), figure: 'angle', run: ramp.name,
    at: end, grows: upOf(ramp) + Math.PI / 2, drag: { kind: 'round', center: at, from: upOf(ramp) - heading, factor: 1, offset: 0 }, value: heading, ...rangeOf('heading'),
  }];
}
