import { inches } from '../base/quantity.ts';
import { type FenceBrief, type Side } from '../brief/types.ts';
import { fenceSection } from './fence-section.ts';
import { type Fence, type Run } from './types.ts';

/** A fence whose posts are not set yet. */
export type FenceLine = Omit<Fence, 'spans'>;

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
