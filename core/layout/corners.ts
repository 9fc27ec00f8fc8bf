import { inches, type Inches } from '../base/quantity.ts';
import { type Fault } from '../brief/types.ts';
import { type Chains } from './chains.ts';
import { mouthFault, shoulderFault } from './faults.ts';
import { fenceCorner, type FenceCorner } from './fence-corner.ts';
import { type FenceLine } from './fence-line.ts';
import { penPartOf } from './yard/pen-runs.ts';
import { isShoulder } from './yard/shoulder-run.ts';

/** Fences that stand square to those beside them. */
const isCorner = ({ run }: FenceLine): boolean => isShoulder(run) || penPartOf(run) !== null;

/** By each fence that begins at a corner with the one before it. */
export type Corners = ReadonlyMap<FenceLine, FenceCorner>;

export type CornersResult = { readonly ok: true; readonly corners: Corners } | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * The corners of the facility: at the mouth, at both ends of each shoulder, round each sort pen. `funnelFrom` is where the funnel's posts
 * begin.
 */
export function findCorners({ outer, funnel, chute, pens }: Chains, funnelFrom: Inches): CornersResult {
  const corners = new Map<FenceLine, FenceCorner>();
  const faults: Fault[] = [];
  for (const chain of [outer, [funnel, ...chute], ...pens]) {
    chain.forEach((line, i) => {
      const before = chain[i - 1];
      if (before === undefined || !(before === funnel || isCorner(before) || isCorner(line))) return;
      const from = before === funnel ? funnelFrom : corners.get(before)?.post.downstream ?? inches(0);
      const corner = fenceCorner(before, line, from);
      if (corner === null) faults.push(before === funnel ? mouthFault() : shoulderFault(before));
      else corners.set(line, corner);
    });
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, corners };
}
