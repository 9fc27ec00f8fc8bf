import { curveLength } from '../../base/curve.ts';
import { inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { runSides, type FenceLine } from '../run-sides.ts';
import { type Run } from '../types.ts';
import { isShoulder } from './shoulder-run.ts';

/** The two fences of a run past the chute. A shoulder's run has no length: its fences are as long as their faces. */
export function yardSides(brief: Brief, run: Run): readonly FenceLine[] {
  const shoulder = isShoulder(run.name);
  const lines = runSides(run, (side) => brief.fences.pad[side], shoulder ? 'squeezePad.width' : 'squeezePad.length');
  return shoulder ? lines.map((line) => ({ ...line, length: inches(curveLength(line.face)) })) : lines;
}
