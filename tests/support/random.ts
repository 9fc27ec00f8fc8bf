/** A stream of figures from a fixed seed (mulberry32, public domain), so that a failing case can be drawn again by its number. */
export interface Random {
  /** 0 up to, not including, 1. */
  readonly next: () => number;
  /** A figure in a range; a quarter of the time one of its ends. */
  readonly between: (least: number, greatest: number) => number;
  readonly whole: (least: number, greatest: number) => number;
  readonly chance: (share: number) => boolean;
  readonly pick: <T>(choices: readonly T[]) => T;
}

export function seeded(seed: number): Random {
  let state = seed >>> 0;
  const next = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  const whole = (least: number, greatest: number): number => least + Math.floor(next() * (greatest - least + 1));
  return {
    next,
    between: (least, greatest) => {
      if (next() < 0.25) return next() < 0.5 ? least : greatest;
      return least + next() * (greatest - least);
    },
    whole,
    chance: (share) => next() < share,
    pick: (choices) => choices[whole(0, choices.length - 1)]!,
  };
}
