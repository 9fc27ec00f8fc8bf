import { otherSide, type Brief, type RunBrief } from '../brief/types.ts';
import { holdingPath, isHolding, pensSide } from './pens/holding-runs.ts';
import { runSides, type FenceLine } from './run-sides.ts';
import { type SetOut } from './set-out-runs.ts';
import { type Run } from './types.ts';
import { isYardRun, yardSides } from './yard/yard-sides.ts';

export { runSides, type FenceLine } from './run-sides.ts';

/** Every fence of the set-out, in walking order, left before right; a face of no length has none. */
export function fenceLines(brief: Brief, setOut: SetOut): readonly FenceLine[] {
  const { fences } = brief;
  let alley = 0;
  let chute = 0;
  return setOut.runs.flatMap((run) => {
    if (run.name === 'crowd-pen') return runSides(run, () => fences.crowdPen, 'crowdPen.sweep');
    if (run.name === 'junction') return junctionSides(brief, setOut, run);
    if (isHolding(run.name)) return runSides(run, (side) => fences.pens[run.aside === true ? pensSide(brief) : side], holdingPath(brief, run.name));
    if (isYardRun(run.name)) return yardSides(brief, run);
    if (run.from === null) return runSides(run, (side) => fences.alley[side], `alley.runs[${String(alley)}]${said(brief.alley.runs[alley++]!)}`);
    return runSides(run, (side) => fences.chute[side], `chute.runs[${String(chute)}]${said(brief.chute.runs[chute++]!)}`);
  });
}

function junctionSides(brief: Brief, setOut: SetOut, run: Run): readonly FenceLine[] {
  const funnel = brief.crowdPen.hand;
  const lengths = { [funnel]: setOut.funnelLength, [otherSide(funnel)]: setOut.mouthDistance };
  const lines = runSides(run, (side) => brief.fences.junction[side], 'crowdPen.funnelAngle');
  return lines.map((line) => ({ ...line, length: lengths[line.side] ?? line.length }));
}

const said = (run: RunBrief): string => (run.kind === 'straight' ? '.length' : '.angle');
