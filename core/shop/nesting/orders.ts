import { type Pile } from './fill-sheet.ts';

/** The orders in which parts are tried: large before small, told by area, by the longer side and by the shorter one. Deterministic. */
export const ORDERS: readonly ((a: Pile, b: Pile) => number)[] = [
  (a, b) => area(b) - area(a),
  (a, b) => longer(b) - longer(a) || area(b) - area(a),
  (a, b) => shorter(b) - shorter(a) || area(b) - area(a),
];

const area = ({ molds }: Pile): number => molds[0]!.area;
const longer = ({ molds: [mold] }: Pile): number => Math.max(mold!.width, mold!.height);
const shorter = ({ molds: [mold] }: Pile): number => Math.min(mold!.width, mold!.height);

/** Figures from 0 up to 1 that come out the same on every machine (a linear congruential generator, modulus 2^32). */
export function figures(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
