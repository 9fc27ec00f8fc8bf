/** Handles of the clear widths of gates in fences, at a jamb, and of the place of the return alley's own gate. */
import { curveHeading, curveLength, curvePoint, type Curve } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { RETURN_GATE, returnGate } from '../../brief/holding-gate.ts';
import { type Brief } from '../../brief/types.ts';
import { GATE_FROM_END, isJambedGate, type Layout, type ManGate, type PenGate } from '../../layout/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { type Drag, type Handle } from '../types.ts';
import { placeHandle } from './opening-handles.ts';
import { rangeOf } from './range-of.ts';

type Jambed = ManGate | PenGate;

/** One that fouls is left out of the layout and has no jamb to be taken hold of. Sort gates have their own, at their hinges. */
export function gateWidthHandles(brief: Brief, layout: Layout): readonly Handle[] {
  return layout.openings.flatMap((gate): readonly Handle[] => {
    if (!isJambedGate(gate)) return [];
    const face = layout.runs.find(({ name }) => name === gate.run)?.faces[gate.side];
    if (face === undefined || face === null) return [];
    if (gate.path.startsWith('openings[')) return [fromMiddle(gate, face, `${gate.path}.width`, `board.handle.${gate.kind}-width`)];
    const pen = layout.holdingPens.find(({ brief: { path } }) => path === gate.path);
    if (pen !== undefined) return [inPen(gate, face, pen.brief.length)];
    if (gate.path !== RETURN_GATE || brief.returnAlley === null) return [];
    return [fromMiddle(gate, face, 'returnAlley.width', 'board.handle.returnWidth'), placeHandle(layout, returnGate(brief.returnAlley), gate, 'board.handle.returnGate')];
  });
}

/** Its middle stands still and both jambs move: the figure is twice what the one that is passed last does. */
function fromMiddle({ u, to, run, width }: Jambed, face: Curve<PlanPoint>, path: string, label: StringKey): Handle {
  const share = to / curveLength(face);
  return {
    id: path, path, label: say(label, { run }), figure: 'length', run, at: curvePoint(face, share), grows: curveHeading(face, share),
    drag: dragOf(face, 2, -2 * u), value: width, ...rangeOf('openingWidth'),
  };
}

/**
 * A holding pen's gate: the jamb toward the crowd pen stands still and the other moves, up to the width at which the gate no longer stands
 * clear of its pen's end; one that is wider stands in the pen's middle, and both its jambs move.
 */
function inPen({ u, from, to, run, width, path: pen }: Jambed, face: Curve<PlanPoint>, length: number): Handle {
  const { least, greatest } = rangeOf('openingWidth');
  const share = from / curveLength(face);
  const path = `${pen}.gate`;
  const clear = length - 2 * GATE_FROM_END;
  const wide = width > clear;
  return {
    id: path, path, label: say('board.handle.holdingGate', { run }), figure: 'length', run, at: curvePoint(face, share), grows: curveHeading(face, share) + Math.PI,
    drag: wide ? dragOf(face, -2, 2 * u) : dragOf(face, -1, to), value: width,
    least: wide ? Math.max(least, clear) : least, greatest: Math.max(width, wide ? Math.min(greatest, length) : Math.min(greatest, clear)),
  };
}

/** value = offset + factor · (how far along the face the hand is). */
function dragOf(face: Curve<PlanPoint>, factor: number, offset: number): Drag {
  if (face.kind === 'line') return { kind: 'along', origin: curvePoint(face, 0), along: curveHeading(face, 0), factor, offset };
  return { kind: 'round', center: face.center, from: face.start, factor: factor * Math.sign(face.sweep) * face.radius, offset };
}
