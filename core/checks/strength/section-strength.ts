import { type Section } from '../../steel/index.ts';

/** Young's modulus of steel, psi: 29,000 ksi (from memory; the figure of every handbook of steel). */
export const STIFFNESS = 29e6;
/** Yield, psi, that any pipe here is taken for: 35 ksi, ASTM A53 grade B (from memory); used oilfield tubing (J55, 55 ksi) is stronger. */
export const YIELD = 35_000;

/** Second moment of area, in⁴, for bending along `way`: `along` the fence, or `across` it. */
export function inertia(section: Section, way: 'along' | 'across'): number {
  const { shape, across, along, wall } = section;
  if (shape === 'round') return (Math.PI / 64) * (across ** 4 - (across - 2 * wall) ** 4);
  const [b, h] = way === 'along' ? [across, along] : [along, across];
  return (b * h ** 3 - (b - 2 * wall) * (h - 2 * wall) ** 3) / 12;
}

/** Section modulus, in³. */
export const modulus = (section: Section, way: 'along' | 'across'): number =>
  inertia(section, way) / ((way === 'along' ? section.along : section.across) / 2);
