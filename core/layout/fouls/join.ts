import { type FenceLine } from '../fence-line.ts';
import { type FencedChains } from '../spans.ts';
import { type Fence } from '../types.ts';
import { isShoulder } from '../yard/shoulder-run.ts';

/** Two fences that share a post, or that only a shoulder parts, which may be no longer than they are thick. */
export interface Join {
  readonly upstream: Fence;
  readonly downstream: Fence;
}

/** Every fence with the one that it follows; across a shoulder also the two beside it. */
export function fenceJoins(lines: readonly FenceLine[], { fences, follows }: FencedChains): readonly Join[] {
  return lines.flatMap((line) => {
    const before = follows.get(line);
    if (before === undefined) return [];
    const across = isShoulder(before.run) ? follows.get(before) : undefined;
    return [before, across].filter((one) => one !== undefined).map((one) => ({ upstream: fences.get(one)!, downstream: fences.get(line)! }));
  });
}
