import { inches, type Inches } from '../base/quantity.ts';
import { STEEL_DENSITY } from './density.ts';
import { type Section } from './types.ts';

/** Outside sizes that a fence is built of; anything else is a slip of the pen. */
const LEAST_OUTSIDE = 0.5;
const GREATEST_OUTSIDE = 16;
const LEAST_WALL = 0.02;

const reasonable = (size: number, wall: number): boolean =>
  size >= LEAST_OUTSIDE && size <= GREATEST_OUTSIDE && wall >= LEAST_WALL;

/** Round pipe or tubing by outside diameter and wall. Weight π·(OD - wall)·wall·density. Null for an impossible size. */
export function roundSection(name: string, outside: Inches, wall: Inches): Section | null {
  if (!reasonable(outside, wall) || wall >= outside / 2) return null;
  const area = Math.PI * (outside - wall) * wall;
  return { name, shape: 'round', across: outside, along: outside, wall, weightPerInch: area * STEEL_DENSITY };
}

/**
 * Square or rectangular tube by outside sizes and nominal wall. Area 2·(across + along - 8t)·t + 3πt², outside corner radius 2t,
 * which agrees with printed tube weights. Null for an impossible size.
 */
export function rectangularSection(name: string, across: Inches, along: Inches, wall: Inches): Section | null {
  if (!reasonable(across, wall) || !reasonable(along, wall) || Math.min(across, along) < 4 * wall) return null;
  const area = 2 * (across + along - 8 * wall) * wall + 3 * Math.PI * wall * wall;
  return { name, shape: 'rectangular', across, along, wall: inches(wall), weightPerInch: area * STEEL_DENSITY };
}
