/** Handles of the catwalks: where each begins and ends along its run, and how wide its deck is. */
import { curveHeading, curveLength, curvePoint, type Curve } from '../../base/curve.ts';
import { angleOf, sub, type PlanPoint } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Catwalk, type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { catwalkEnd } from '../catwalk-end.ts';
import { type Drag, type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

/** Least deck that a hand leaves, inches. */
const LEAST = 12;

export function catwalkHandles(_: Brief, layout: Layout): readonly Handle[] {
  return layout.catwalks.flatMap((catwalk) => [endHandle(layout, catwalk, 'from'), endHandle(layout, catwalk, 'to'), widthHandle(catwalk)]);
}

function endHandle(layout: Layout, catwalk: Catwalk, which: 'from' | 'to'): Handle {
  const { brief } = catwalk;
  const { run, line, before, share, value, total } = catwalkEnd(layout, catwalk, which);
  const path = `${catwalk.path}.${which}`;
  const to = catwalkEnd(layout, catwalk, 'to').value;
  return {
    id: path, path, label: say(which === 'from' ? 'board.handle.catwalkFrom' : 'board.handle.catwalkTo', { run: run.name }), figure: 'length', run: run.name,
    at: curvePoint(line, share), grows: curveHeading(line, share), drag: dragOf(line, before), value,
    least: which === 'from' ? 0 : brief.from + LEAST, greatest: which === 'from' ? Math.max(0, to - LEAST) : total,
  };
}

function dragOf(line: Curve<PlanPoint>, offset: number): Drag {
  if (line.kind === 'line') return { kind: 'along', origin: curvePoint(line, 0), along: curveHeading(line, 0), factor: 1, offset };
  return { kind: 'round', center: line.center, from: line.start, factor: Math.sign(line.sweep) * curveLength(line) / Math.abs(line.sweep), offset };
}

/** At the middle of the open edge of the deck's middle part: the edge at the fence stands still. */
function widthHandle({ path, brief, stretches }: Catwalk): Handle {
  const parts = stretches.flatMap(({ run, parts: own }) => own.map((part) => ({ run, part })));
  const { run, part: { corners: [a, b, c, d] } } = parts[Math.floor(parts.length / 2)]!;
  const middle = (p: PlanPoint, q: PlanPoint): PlanPoint => curvePoint({ kind: 'line', a: p, b: q }, 0.5);
  const [near, far] = [middle(a, b), middle(d, c)];
  const along = angleOf(sub(far, near));
  const field = `${path}.width`;
  return {
    id: field, path: field, label: say('board.handle.catwalkWidth', { run }), figure: 'length', run, at: far, grows: along,
    drag: { kind: 'along', origin: near, along, factor: 1, offset: 0 }, value: brief.width, ...rangeOf('catwalkWidth'),
  };
}
