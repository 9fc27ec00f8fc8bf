/** A stretch as its pieces are set out on it: points of the plan beside its fence, and the parts laid flat side by side. */
import { type PlanPoint, type Vec } from '../../base/points.ts';
import { inches } from '../../base/quantity.ts';
import { chordAside, deckPoint, reachAside, type Catwalk, type DeckPart, type DeckStretch, type Fence } from '../../layout/index.ts';
import { type CatwalkPlace } from '../types.ts';

/** How a piece stands over the ground (`CatwalkPlace`). */
export type Rise = Pick<CatwalkPlace, 'low' | 'high' | 'leaning' | 'over'>;

export interface PartFrame {
  readonly part: DeckPart;
  /** Middle of the part, laid flat. */
  readonly x: number;
  readonly long: number;
  /** Along the part `aside` from its edge at the fence, on a slope along it. */
  readonly chord: (aside: number) => number;
  /** How much the next part on either side lies at another slope; 0 where there is none. */
  readonly turns: readonly [number, number];
  /** On the plan, at a share of the part's length. */
  readonly at: (share: 0 | 1, aside: number) => PlanPoint;
  /** Laid flat, at a share of the part's length. */
  readonly flat: (share: 0 | 1, aside: number) => Vec;
  /** The strip between two lines along the part. */
  readonly strip: (aside0: number, aside1: number) => { readonly plan: readonly PlanPoint[]; readonly roll: readonly Vec[] };
  /** Height of the deck's top over the ground, `inside` inches from an end, level. */
  readonly top: (share: 0 | 1, inside?: number) => number;
  /** What lies along the part from `low` to `high` plumb over the deck's top (negative: under it): its heights, and where it slopes its side. */
  readonly band: (low: number, high: number) => Rise;
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
  const parts = stretch.parts.map((part, i, all): PartFrame => {
    // Laid flat as the plan has it, so that what stands under one place stays under it.
    const long = Math.max(part.near, part.far) * Math.cos(part.slope);
    const x = before + long / 2;
    before += long;
    const middle = (part.from + part.to) / 2;
    const level = (aside: number): number => chordAside(fence, part.angle, part.to - part.from, aside);
    const chord = (aside: number): number => level(aside) / Math.cos(part.slope);
    const turn = (other: DeckPart | undefined): number => (other === undefined ? 0 : Math.abs(other.slope - part.slope));
    const top = (share: 0 | 1, inside = 0): number => part.heights[share] + (share === 0 ? inside : -inside) * Math.tan(part.slope);
    const band = (low: number, high: number): Rise => {
      const [a, b] = part.heights;
      const leaning = part.slope === 0 ? null : [{ x: x - long / 2, y: a + low }, { x: x + long / 2, y: b + low }, { x: x + long / 2, y: b + high }, { x: x - long / 2, y: a + high }];
      return { low: inches(Math.min(a, b) + low), high: inches(Math.max(a, b) + high), leaning, over: inches(low) };
    };
    const at = (share: 0 | 1, aside: number): PlanPoint => deckPoint(fence, middle, part.angle, share === 0 ? part.from : part.to, aside);
    const flat = (share: 0 | 1, aside: number): Vec => ({ x: x + (share - 0.5) * level(aside), y: aside });
    const four = <T>(of: (share: 0 | 1, aside: number) => T, a: number, b: number): readonly T[] => [of(0, a), of(1, a), of(1, b), of(0, b)];
    return { part, x, long, chord, turns: [turn(all[i - 1]), turn(all[i + 1])], at, flat, top, band, strip: (a, b) => ({ plan: four(at, a, b), roll: four(flat, a, b) }) };
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
