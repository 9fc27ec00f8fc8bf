/** Handles of the openings: where along its run each one stands. */
import { curveHeading, curveLength, curvePoint, type Curve } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { type Brief, type OpeningBrief } from '../../brief/types.ts';
import { type Layout, type Opening } from '../../layout/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { countedLine } from '../counted-line.ts';
import { type Drag, type Handle } from '../types.ts';

/** One that fouls is left out of the layout and has no place to be taken hold of. */
export function openingHandles(brief: Brief, layout: Layout): readonly Handle[] {
  return brief.openings.flatMap((opening) => {
    const stands = layout.openings.find((one) => one.path === opening.path);
    return stands === undefined ? [] : [placeHandle(layout, opening, stands, `board.handle.${stands.kind}`)];
  });
}

/** Where along its run an opening stands: the field `at` of what `path` names. */
export function placeHandle(layout: Layout, opening: OpeningBrief, stands: Opening, label: StringKey): Handle {
  const { run, line, before, share } = countedLine(layout, opening, stands);
  const chute = opening.run === 'chute' ? layout.runs.filter((one) => one.from !== null) : [];
  const path = `${opening.path}.at`;
  return {
    id: path, path, label: say(label, { run: run.name }),
    figure: 'length', run: run.name, at: stands.at, grows: curveHeading(line, share), drag: dragOf(line, before),
    value: opening.at, least: 0, greatest: chute.length === 0 ? curveLength(line) : chute.reduce((sum, one) => sum + one.length, 0),
  };
}

function dragOf(line: Curve<PlanPoint>, offset: number): Drag {
  if (line.kind === 'line') return { kind: 'along', origin: curvePoint(line, 0), along: curveHeading(line, 0), factor: 1, offset };
  return { kind: 'round', center: line.center, from: line.start, factor: Math.sign(line.sweep) * line.radius, offset };
}
