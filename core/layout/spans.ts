import { inches, type Inches } from '../base/quantity.ts';
import { type Chains } from './chains.ts';
import { type FenceLine } from './fence-line.ts';
import { type MouthCorner } from './mouth-corner.ts';
import { type Cut } from './openings/cuts.ts';
import { type Ends } from './openings/fit.ts';
import { makeSpans } from './span.ts';
import { evenStop, type Stop } from './stop.ts';
import { type Fence } from './types.ts';

export interface PivotGaps {
  readonly alley: Inches;
  readonly funnel: Inches;
}

/** Where each fence begins and ends, and for each fence the one that it follows on the same post. */
export interface ChainEnds {
  readonly ends: ReadonlyMap<FenceLine, Ends>;
  readonly follows: ReadonlyMap<FenceLine, FenceLine>;
}

/** The fences with their posts, and for each fence the one that it follows on the same post. */
export interface FencedChains {
  readonly fences: ReadonlyMap<FenceLine, Fence>;
  readonly follows: ReadonlyMap<FenceLine, FenceLine>;
}

/** The two ends of every fence of every chain. */
export function chainEnds(chains: Chains, gaps: PivotGaps, corner: MouthCorner): ChainEnds {
  const ends = new Map<FenceLine, Ends>();
  const follows = new Map<FenceLine, FenceLine>();
  const walk = (chain: readonly FenceLine[], first: Stop, lastOf: (line: FenceLine) => Stop): void => {
    chain.forEach((line, i) => {
      const before = chain[i - 1];
      if (before !== undefined) follows.set(line, before);
      const start = before === undefined ? first : evenStop({ kind: 'joint' }, inches(0));
      const end = i === chain.length - 1 ? lastOf(line) : evenStop({ kind: 'joint' }, line.length);
      ends.set(line, { start, end });
    });
  };
  const freeStart = evenStop({ kind: 'free' }, inches(0));
  const freeEnd = (line: FenceLine): Stop => evenStop({ kind: 'free' }, line.length);
  const { post, rail, skin, end } = corner;
  walk(chains.outer, freeStart, freeEnd);
  walk(chains.alley, freeStart, (line) => evenStop({ kind: 'pivot' }, inches(line.length - gaps.alley)));
  walk([chains.funnel], evenStop({ kind: 'pivot' }, gaps.funnel), () => ({
    end,
    post: post.upstream,
    rail: rail.upstream,
    skin: skin.upstream,
  }));
  walk(chains.chute, { end, post: post.downstream, rail: rail.downstream, skin: skin.downstream }, freeEnd);
  const first = chains.chute[0];
  if (first !== undefined) follows.set(first, chains.funnel);
  return { ends, follows };
}

/** Sets the posts of every fence between its two ends and what openings cut into it. */
export function spanFences({ ends, follows }: ChainEnds, cuts: ReadonlyMap<FenceLine, readonly Cut[]>): FencedChains {
  const fences = new Map([...ends].map(([line, { start, end }]): [FenceLine, Fence] =>
    [line, { ...line, spans: makeSpans(line, start, end, cuts.get(line) ?? []) }]));
  return { fences, follows };
}
