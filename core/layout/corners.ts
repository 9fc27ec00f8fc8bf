import { inches, type Inches } from '../base/quantity.ts';
import { type Fault } from '../brief/types.ts';
import { type Chains } from './chains.ts';
import { mouthFault, shoulderFault } from './faults.ts';
import { fenceCorner, type FenceCorner } from './fence-corner.ts';
import { type FenceLine } from './fence-line.ts';
import { isShoulder } from './yard/shoulder-run.ts';

/** By each fence that begins at a corner with the one before it. */
export type Corners = ReadonlyMap<FenceLine, FenceCorner>;

export type CornersResult = { readonly ok: true; readonly corners: Corners } | { readonly ok: false; readonly faults: readonly Fault[] };

/** The corners of the facility: at the mouth, and at both ends of each shoulder. `funnelFrom` is where the funnel's posts begin. */
export function findCorners({ outer, funnel, chute }: Chains, funnelFrom: Inches): CornersResult {
  const corners = new Map<FenceLine, FenceCorner>();
  const faults: Fault[] = [];
  for (const chain of [outer, [funnel, ...chute]]) {
    chain.forEach((line, i) => {
      const before = chain[i - 1];
      if (before === undefined || !(before === funnel || isShoulder(line.run) || isShoulder(before.run))) return;
      const from = before === funnel ? funnelFrom : corners.get(before)?.post.downstream ?? inches(0);
      const corner = fenceCorner(before, line, from);
      if (corner === null) faults.push(before === funnel ? mouthFault() : shoulderFault(before));
      else corners.set(line, corner);
    });
  }
  return faults.length > 0 ? { ok: false, faults } : { ok: true, corners };
}
