import { inches, type Inches } from '../base/quantity.ts';
import { type Chains } from './chains.ts';
import { type FenceLine } from './fence-line.ts';
import { type Corners } from './corners.ts';
import { type FenceCorner } from './fence-corner.ts';
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

/** The two ends of every fence of every chain. A fence without a corner in `corners` goes on in line from the one before it. */
export function chainEnds(chains: Chains, gaps: PivotGaps, corners: Corners): ChainEnds {
  const ends = new Map<FenceLine, Ends>();
  const follows = new Map<FenceLine, FenceLine>();
  const walk = (chain: readonly FenceLine[], first: Stop, lastOf: (line: FenceLine) => Stop): void => {
    chain.forEach((line, i) => {
      const before = chain[i - 1];
      if (before !== undefined) follows.set(line, before);
      const next = chain[i + 1];
      ends.set(line, { start: before === undefined ? first : startOf(line), end: next === undefined ? lastOf(line) : endOf(line, next) });
    });
  };
  const startOf = (line: FenceLine): Stop => {
    const corner = corners.get(line);
    return corner === undefined ? evenStop({ kind: 'joint' }, inches(0)) : cornerStop(corner, 'downstream');
  };
  const endOf = (line: FenceLine, next: FenceLine): Stop => {
    const corner = corners.get(next);
    return corner === undefined ? evenStop({ kind: 'joint' }, line.length) : cornerStop(corner, 'upstream');
  };
  const freeStart = evenStop({ kind: 'free' }, inches(0));
  const freeEnd = (line: FenceLine): Stop => evenStop({ kind: 'free' }, line.length);
  walk(chains.outer, freeStart, freeEnd);
  walk(chains.alley, freeStart, (line) => evenStop({ kind: 'pivot' }, inches(line.length - gaps.alley)));
  const first = chains.chute[0]!;
  walk([chains.funnel], evenStop({ kind: 'pivot' }, gaps.funnel), (line) => endOf(line, first));
  walk(chains.chute, startOf(first), freeEnd);
  follows.set(first, chains.funnel);
  for (const pen of chains.pens) walk(pen, freeStart, freeEnd);
  return { ends, follows };
}

/** Chains that stand by themselves: each between two free ends, its fences in line. */
export function withLoose({ ends, follows }: ChainEnds, chains: readonly (readonly FenceLine[])[]): ChainEnds {
  const own = chains.flatMap((chain) => chain.map((line, i): [FenceLine, Ends] => [line, {
    start: evenStop({ kind: i === 0 ? 'free' : 'joint' }, inches(0)),
    end: evenStop({ kind: i === chain.length - 1 ? 'free' : 'joint' }, line.length),
  }]));
  const after = chains.flatMap((chain) => chain.slice(1).map((line, i): [FenceLine, FenceLine] => [line, chain[i]!]));
  return { ends: new Map([...ends, ...own]), follows: new Map([...follows, ...after]) };
}

const cornerStop = ({ end, post, rail, skin }: FenceCorner, at: 'upstream' | 'downstream'): Stop =>
  ({ end, post: post[at], rail: rail[at], skin: skin[at] });

/** Sets the posts of every fence between its two ends and what openings cut into it. */
export function spanFences({ ends, follows }: ChainEnds, cuts: ReadonlyMap<FenceLine, readonly Cut[]>): FencedChains {
  const fences = new Map([...ends].map(([line, { start, end }]): [FenceLine, Fence] =>
    [line, { ...line, spans: makeSpans(line, start, end, cuts.get(line) ?? []) }]));
  return { fences, follows };
}
