/** Choices that a random project is made of, from fast-check (which can shrink them) or from a plain seed. */
import * as fc from 'fast-check';
import { seeded } from './random.ts';

export interface Draw {
  /** A figure from least to greatest, to a sixteenth; at one of its ends where `corner` says so. */
  readonly figure: (least: number, greatest: number) => number;
  readonly whole: (least: number, greatest: number) => number;
  readonly pick: <T>(choices: readonly T[]) => T;
  readonly chance: (share: number) => boolean;
}

/** Half of the figures of a corner project stand at an end of their range. */
const AT_AN_END = 0.5;

function makeDraw(corner: boolean, whole: Draw['whole']): Draw {
  const chance = (share: number): boolean => whole(0, 999) < share * 1000;
  const inside = (least: number, greatest: number): number => {
    const sixteenth = Math.ceil(least * 16) + whole(0, Math.max(0, Math.floor(greatest * 16) - Math.ceil(least * 16)));
    return Math.min(greatest, Math.max(least, sixteenth / 16));
  };
  const end = (least: number, greatest: number): number => (chance(0.5) ? least : greatest);
  return {
    figure: (least, greatest) => (corner && chance(AT_AN_END) ? end(least, greatest) : inside(least, greatest)),
    whole: (least, greatest) => (corner && chance(AT_AN_END) ? end(least, greatest) : whole(least, greatest)),
    pick: (choices) => choices[whole(0, choices.length - 1)]!,
    chance,
  };
}

export const seededDraw = (seed: number, corner: boolean): Draw => makeDraw(corner, seeded(seed).whole);

/** Draws through fast-check's own generator, so that a failing project is shrunk to a plainer one. */
export const checkedDraw = (gen: fc.GeneratorValue, corner: boolean): Draw =>
  makeDraw(corner, (least, greatest) => gen(fc.integer, { min: least, max: greatest }));
