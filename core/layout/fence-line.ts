import { inches } from '../base/quantity.ts';
import { otherSide, type Brief, type FenceBrief, type RunBrief, type Side } from '../brief/types.ts';
import { fenceSection } from './fence-section.ts';
import { type SetOut } from './set-out-runs.ts';
import { type Fence, type Run } from './types.ts';

/** A fence whose posts are not set yet. */
export type FenceLine = Omit<Fence, 'spans'>;

/** Every fence of the set-out, in walking order, left before right; a face of no length has none. */
export function fenceLines(brief: Brief, setOut: SetOut): readonly FenceLine[] {
  const lines: FenceLine[] = [];
  let alley = 0;
  let chute = 0;
  for (const run of setOut.runs) {
    if (run.name === 'crowd-pen') {
      lines.push(...runSides(run, () => brief.fences.crowdPen, 'crowdPen.sweep'));
    } else if (run.name === 'junction') {
      const funnel = brief.crowdPen.hand;
      const lengths = { [funnel]: setOut.funnelLength, [otherSide(funnel)]: setOut.mouthDistance };
      for (const line of runSides(run, (side) => brief.fences.junction[side], 'crowdPen.funnelAngle')) {
        lines.push({ ...line, length: lengths[line.side] ?? line.length });
      }
    } else if (run.from === null) {
      lines.push(...runSides(run, (side) => brief.fences.alley[side], `alley.runs[${String(alley)}]${said(brief.alley.runs[alley]!)}`));
      alley++;
    } else {
      lines.push(...runSides(run, (side) => brief.fences.chute[side], `chute.runs[${String(chute)}]${said(brief.chute.runs[chute]!)}`));
      chute++;
    }
  }
  return lines;
}

const said = (run: RunBrief): string => (run.kind === 'straight' ? '.length' : '.angle');

/** The fences of one run, left before right; a side without a face has none. */
export function runSides(run: Run, briefOf: (side: Side) => FenceBrief, lengthPath: string): readonly FenceLine[] {
  const lines: FenceLine[] = [];
  for (const side of ['left', 'right'] as const) {
    const face = run.faces[side];
    if (face === null) continue;
    const brief = briefOf(side);
    const faceRadius = face.kind === 'arc' ? face.radius : null;
    lines.push({
      run: run.name,
      side,
      brief,
      section: fenceSection(brief),
      face,
      length: inches(faceRadius === null ? run.length : faceRadius * (run.angle ?? 0)),
      faceRadius,
      // The pen's own fence is the wall that its cattle turn away from, like any outer wall.
      radiusSign: faceRadius !== null && side === run.hand ? -1 : 1,
      outward: side === 'left' ? 1 : -1,
      lengthPath,
    });
  }
  return lines;
}
