import { inches, type Inches } from '../../base/quantity.ts';
import { NOISE } from '../../base/tolerance.ts';
import { type WeldsBrief } from '../../brief/types.ts';
import { WELD_PRACTICE } from './practice.ts';

/**
 * Size of a fillet by the thickness of the thinner part: what AISC 360 Table J2.4 asks at least (from memory), or the shop's own least
 * where that is more; on a part thinner than that its own thickness, up to the next 1/16 in. Inches.
 */
export function filletSize({ fillet }: WeldsBrief, thinner: number): Inches {
  const { leastFillet, step } = WELD_PRACTICE;
  const row = leastFillet.find((one) => thinner <= one.thinner + NOISE);
  if (row === undefined) throw new Error(`not a thickness: ${String(thinner)}`);
  const most = Math.ceil(thinner / step - NOISE) * step;
  return inches(Math.min(Math.max(row.size, fillet), Math.max(step, most)));
}
