/** Handles of the squeeze pad: its length at its far end, its width at a face. */
import { curveHeading, curvePoint } from '../../base/curve.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function yardHandles({ squeezePad: pad }: Brief, layout: Layout): readonly Handle[] {
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
