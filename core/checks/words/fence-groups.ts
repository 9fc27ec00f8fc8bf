import { type Fence } from '../../layout/index.ts';
import { say } from '../../text/index.ts';

/** Fences that are alike in what a rule asks, and how a person calls them. */
export interface FenceGroup {
  readonly first: Fence;
  readonly fences: readonly Fence[];
  readonly names: string;
}

/** Groups fences by a key, in walking order. */
export function groupFences(fences: readonly Fence[], keyOf: (fence: Fence) => string | number): readonly FenceGroup[] {
  const groups = new Map<string | number, Fence[]>();
  for (const fence of fences) {
    const key = keyOf(fence);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [fence]);
    else group.push(fence);
  }
  return [...groups.values()].map((group) => ({ first: group[0]!, fences: group, names: fenceNames(group) }));
}

/** `alley left and right, crowd-pen right, chute left`: fences of one part and side are called together. */
export function fenceNames(fences: readonly Fence[]): string {
  const sides = new Map<string, Set<string>>();
  for (const fence of fences) {
    const part = partOf(fence.run);
    const known = sides.get(part);
    if (known === undefined) sides.set(part, new Set([fence.side]));
    else known.add(fence.side);
  }
  return [...sides].map(([run, found]) =>
    found.size === 2 ? say('where.sides', { run }) : say('where.side', { run, side: [...found][0]! })).join(', ');
}

/** The part of the facility that a run belongs to: `chute` of `chute-2`, `sort` of a sort pen's own fences too. */
export const partOf = (run: string): string => run.replace(/-\d+(-(in|back|out))?$/, '');
