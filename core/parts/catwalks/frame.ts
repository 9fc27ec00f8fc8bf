/** A stretch as its pieces are set out on it: points of the plan beside its fence, and the parts laid flat side by side. */
import { type PlanPoint, type Vec } from '../../base/points.ts';
import { chordAside, deckPoint, reachAside, type Catwalk, type DeckPart, type DeckStretch, type Fence } from '../../layout/index.ts';

export interface PartFrame {
  readonly part: DeckPart;
  /** Middle of the part, laid flat. */
  readonly x: number;
  readonly long: number;
  /** Across the part `aside` from its edge at the fence. */
  readonly chord: (aside: number) => number;
  /** On the plan, at a share of the part's length. */
  readonly at: (share: 0 | 1, aside: number) => PlanPoint;
  /** Laid flat, at a share of the part's length. */
  readonly flat: (share: 0 | 1, aside: number) => Vec;
  /** The strip between two lines along the part. */
  readonly strip: (aside0: number, aside1: number) => { readonly plan: readonly PlanPoint[]; readonly roll: readonly Vec[] };
}

export interface StretchFrame {
  readonly stretch: DeckStretch;
  readonly fence: Fence;
  readonly parts: readonly PartFrame[];
  /** Where a place along the face lies when the parts are laid flat. */
  readonly xAt: (u: number) => number;
  /** Square to the fence at `u`, from the post backs to the line `aside` inches from the edge at the fence. */
  readonly reach: (u: number, aside: number) => number;
}

export function stretchFrame(stretch: DeckStretch, fence: Fence): StretchFrame {
  let before = 0;
  const parts = stretch.parts.map((part): PartFrame => {
    const long = Math.max(part.near, part.far);
    const x = before + long / 2;
    before += long;
    const middle = (part.from + part.to) / 2;
    const chord = (aside: number): number => chordAside(fence, part.angle, part.to - part.from, aside);
    const at = (share: 0 | 1, aside: number): PlanPoint => deckPoint(fence, middle, part.angle, share === 0 ? part.from : part.to, aside);
    const flat = (share: 0 | 1, aside: number): Vec => ({ x: x + (share - 0.5) * chord(aside), y: aside });
    const four = <T>(of: (share: 0 | 1, aside: number) => T, a: number, b: number): readonly T[] => [of(0, a), of(1, a), of(1, b), of(0, b)];
    return { part, x, long, chord, at, flat, strip: (a, b) => ({ plan: four(at, a, b), roll: four(flat, a, b) }) };
  });
  const partAt = (u: number): PartFrame => parts.find(({ part }) => u <= part.to) ?? parts[parts.length - 1]!;
  return {
    stretch, fence, parts,
    xAt: (u) => {
      const { part, x, long } = partAt(u);
      return x + ((u - part.from) / (part.to - part.from) - 0.5) * long;
    },
    reach: (u, aside) => {
      const { part } = partAt(u);
      return reachAside(fence, (part.from + part.to) / 2, part.angle, u, aside);
    },
  };
}

/** The fence beside a stretch. Throws where it is not there: a programmer's mistake. */
export function fenceBeside(fences: readonly Fence[], { run, side }: DeckStretch): Fence {
  const fence = fences.find((one) => one.run === run && one.side === side);
  if (fence === undefined) throw new Error(`no fence ${run} ${side}`);
  return fence;
}

export const framesOf = (catwalk: Catwalk, fences: readonly Fence[]): readonly StretchFrame[] =>
  catwalk.stretches.map((stretch) => stretchFrame(stretch, fenceBeside(fences, stretch)));
