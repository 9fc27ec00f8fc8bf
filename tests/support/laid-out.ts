import { type Brief, type Side } from '../../core/brief/types.ts';
import { layOut, type Fence, type Layout, type Run } from '../../core/layout/index.ts';
import { makeParts, type Parts } from '../../core/parts/index.ts';

/** The layout of a brief that can be laid out; throws with its faults where it can't. */
export function laidOut(brief: Brief): Layout {
  const result = layOut(brief);
  if (!result.ok) throw new Error(`faults: ${JSON.stringify(result.faults)}`);
  return result.layout;
}

/** The pieces of a brief that can be made; throws with its faults where it can't. */
export function partsOf(brief: Brief): Parts {
  const result = makeParts(brief, laidOut(brief));
  if (!result.ok) throw new Error(`faults: ${JSON.stringify(result.faults)}`);
  return result.parts;
}

/** A run by name; throws where there is none. */
export function runOf(layout: Layout, name: string): Run {
  const run = layout.runs.find((candidate) => candidate.name === name);
  if (run === undefined) throw new Error(`no run ${name}`);
  return run;
}

/** A fence by run and side; throws where there is none. */
export function fenceOf(layout: Layout, run: string, side: Side): Fence {
  const fence = layout.fences.find((candidate) => candidate.run === run && candidate.side === side);
  if (fence === undefined) throw new Error(`no fence ${run} ${side}`);
  return fence;
}
