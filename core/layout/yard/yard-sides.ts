import { curveLength } from '../../base/curve.ts';
import { inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { runSides, type FenceLine } from '../run-sides.ts';
import { type Run } from '../types.ts';
import { penPartOf } from './pen-runs.ts';
import { isShoulder, PAD_SHOULDER } from './shoulder-run.ts';

/** Whether a run lies past the chute: the pad, the sort alley, their shoulders, a sort pen's fences. */
export const isYardRun = (run: string): boolean => isShoulder(run) || run === 'squeeze-pad' || /^sort-\d+(-(in|back|out))?$/.test(run);

/** The fences of a run past the chute. Those of a run of no length are as long as their faces. */
export function yardSides(brief: Brief, run: Run): readonly FenceLine[] {
  const pad = run.name === PAD_SHOULDER || run.name === 'squeeze-pad';
  const lines = runSides(run, (side) => brief.fences[pad ? 'pad' : 'pens'][side], lengthPath(brief, run.name));
  return isShoulder(run.name) || penPartOf(run.name) !== null ? lines.map((line) => ({ ...line, length: inches(curveLength(line.face)) })) : lines;
}

/** The field that makes a fence longer or shorter. */
function lengthPath(brief: Brief, run: string): string {
  if (run === 'squeeze-pad') return 'squeezePad.length';
  if (isShoulder(run)) return brief.squeezePad === null ? 'chute.width' : 'squeezePad.width';
  const name = penPartOf(run)?.pen ?? run;
  const pen = brief.sortPens.find((one) => one.name === name);
  if (pen === undefined) throw new Error(`no sort pen for ${run}`);
  return `${pen.path}.gate`;
}
