import { NOISE } from '../base/tolerance.ts';

const PLACES = 1e6;

/** A figure that floating noise alone keeps from one of six decimals is that one: 165 for 164.99999999999997. Others stay whole. */
export function clearFigure(value: number): number {
  const short = Math.round(value * PLACES) / PLACES;
  return Math.abs(value - short) <= NOISE ? short + 0 : value;
}
