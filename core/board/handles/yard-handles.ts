/** Handles of the squeeze pad, its length at its far end, its width at a face; of each sort gate, its clear width at its hinges. */
import { curveHeading, curveLength, curvePoint } from '../../base/curve.ts';
import { type Brief } from '../../brief/types.ts';
import { isJambedGate, type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export const yardHandles = (brief: Brief, layout: Layout): readonly Handle[] => [...padHandles(brief, layout), ...sortHandles(brief, layout)];

function padHandles({ squeezePad: pad }: Brief, layout: Layout): readonly Handle[] {
  const run = layout.runs.find(({ name }) => name === 'squeeze-pad');
  if (pad === null || run === undefined) return [];
  const along = curveHeading(run.path, 0);
  const { left } = run.faces;
  if (left === null) throw new Error('a squeeze pad without its left face');
  return [
    {
      id: 'squeezePad.length', path: 'squeezePad.length', label: say('board.handle.padLength'), figure: 'length', run: run.name,
      at: curvePoint(run.path, 1), grows: along, drag: { kind: 'along', origin: curvePoint(run.path, 0), along, factor: 1, offset: 0 },
      value: pad.length, ...rangeOf('padSize'),
    },
    {
      id: 'squeezePad.width', path: 'squeezePad.width', label: say('board.handle.padWidth'), figure: 'length', run: run.name,
      at: curvePoint(left, 0.5), grows: along + Math.PI / 2,
      // Both faces move: the figure is twice what one does.
      drag: { kind: 'along', origin: curvePoint(run.path, 0.5), along: along + Math.PI / 2, factor: 2, offset: 0 },
      value: pad.width, ...rangeOf('padSize'),
    },
  ];
}

/** One whose gate fouls has none to take hold of. */
function sortHandles({ sortPens }: Brief, layout: Layout): readonly Handle[] {
  return sortPens.flatMap(({ name, side, gate, path }): readonly Handle[] => {
    const face = layout.runs.find((run) => run.name === name)?.faces[side];
    const stands = layout.openings.find((one) => one.path === path);
    if (face === undefined || face === null || stands === undefined || !isJambedGate(stands)) return [];
    const along = curveHeading(face, 0);
    const length = curveLength(face);
    return [{
      id: `${path}.gate`, path: `${path}.gate`, label: say('board.handle.sortGate', { run: name }), figure: 'length', run: name,
      at: curvePoint(face, stands.to / length), grows: along,
      // The jamb that is passed first stands still.
      drag: { kind: 'along', origin: curvePoint(face, stands.from / length), along, factor: 1, offset: 0 }, value: gate, ...rangeOf('openingWidth'),
    }];
  });
}
