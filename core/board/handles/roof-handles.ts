/** Handles of the roof over the squeeze pad: its length at its far edge, its width at its left one. */
import { curvePoint } from '../../base/curve.ts';
import { add, planPoint, scale, unitAt } from '../../base/points.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Handle } from '../types.ts';
import { rangeOf } from './range-of.ts';

export function roofHandles({ squeezePad }: Brief, layout: Layout): readonly Handle[] {
  const run = layout.runs.find(({ name }) => name === 'squeeze-pad');
  const roof = squeezePad?.roof ?? null;
  if (roof === null || run === undefined) return [];
  const middle = curvePoint(run.path, 0.5);
  const along = run.headings[0];
  // The roof lies about the pad's middle: two edges move, and the figure is twice what one does.
  const edge = (field: 'length' | 'width', heading: number): Handle => {
    const { x, y } = add(middle, scale(unitAt(heading), roof[field] / 2));
    const path = `squeezePad.roof.${field}`;
    return {
      id: path, path, label: say(field === 'length' ? 'board.handle.roofLength' : 'board.handle.roofWidth'), figure: 'length', run: run.name,
      at: planPoint(x, y), grows: heading, drag: { kind: 'along', origin: middle, along: heading, factor: 2, offset: 0 }, value: roof[field], ...rangeOf('padSize'),
    };
  };
  return [edge('length', along), edge('width', along + Math.PI / 2)];
}
