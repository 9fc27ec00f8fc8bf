import { inches, type Inches } from '../base/quantity.ts';

/** A standard hole for a bolt of this diameter, inches: AISC 360 Table J3.3, 1/16 in over to 7/8 in, 1/8 in over from 1 in on (from memory). */
export const boltHole = (diameter: number): Inches => inches(diameter + (diameter < 1 ? 0.0625 : 0.125));
