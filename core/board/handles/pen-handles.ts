/** Handles of the crowd pen, its funnel and the chute's width. */
import { angleOf, planPoint, sub } from '../../base/points.ts';
import { curveHeading, curvePoint } from '../../base/curve.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout, type Run } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function penHandles(brief: Brief, layout: Layout): readonly Handle[] {
  const pen = runNamed(layout, 'crowd-pen');
  const { path } = pen;
  if (path.kind !== 'arc') throw new Error('a crowd pen whose path is no arc');
  const turn = Math.sign(path.sweep);
  const { hand, radius, sweep, funnelAngle } = brief.crowdPen;
  const center = layout.pivot;
  const funnel = runNamed(layout, 'junction').faces[hand];
  if (funnel === null) throw new Error(`no funnel on the ${hand} side of the junction`);
  const middle = curvePoint(path, 0.5);
  const mouth = curvePoint(funnel, 1);
  const inward = hand === 'left' ? Math.PI : 0;
  const clear = rangeOf('chuteWidth');
  const reach = rangeOf('radius');
  return [
    {
      id: 'crowdPen.radius', path: 'crowdPen.radius', label: say('board.handle.radius'), figure: 'length', run: pen.name, at: middle,
      grows: angleOf(sub(middle, center)), drag: { kind: 'away', center, factor: 1, offset: 0 },
      value: radius, ...reach, least: Math.max(reach.least, brief.chute.width),
    },
    {
      id: 'crowdPen.sweep', path: 'crowdPen.sweep', label: say('board.handle.sweep'), figure: 'angle', run: pen.name, at: curvePoint(path, 0),
      grows: curveHeading(path, 0) + Math.PI, drag: { kind: 'round', center, from: path.start + path.sweep, factor: -turn, offset: 0 },
      value: sweep, ...rangeOf('sweep'),
    },
    {
      id: 'crowdPen.funnelAngle', path: 'crowdPen.funnelAngle', label: say('board.handle.funnel'), figure: 'angle', run: 'junction',
      // Halfway along the funnel's face: the mouth is where the width is taken hold of.
      at: curvePoint(funnel, 0.5),
      grows: curveHeading(funnel, 0) - (turn * Math.PI) / 2, drag: { kind: 'round', center, from: Math.PI / 2, factor: -turn, offset: 0 },
      value: funnelAngle, ...rangeOf('funnelAngle'),
    },
    {
      id: 'chute.width', path: 'chute.width', label: say('board.handle.width'), figure: 'length', run: 'chute-1', at: mouth, grows: inward,
      // The outer face stands still: the width is what lies between it and the funnel's end.
      drag: { kind: 'along', origin: planPoint(hand === 'left' ? radius : -radius, mouth.y), along: inward, factor: 1, offset: 0 },
      value: brief.chute.width, ...clear, greatest: Math.min(clear.greatest, radius),
    },
  ];
}

function runNamed(layout: Layout, name: string): Run {
  const run = layout.runs.find((one) => one.name === name);
  if (run === undefined) throw new Error(`a layout without a run ${name}`);
  return run;
}
