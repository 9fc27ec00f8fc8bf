import { inches } from '../../base/quantity.ts';
import { filletArea, stitchedLength } from './deposit.ts';
import { type Weld, type WeldLot } from './types.ts';

/** Alike welds: how many, how long and of what section each is. */
export function lotOf(run: string, weld: Weld, count: number, each: number, area: number): WeldLot {
  return { weld, run, count, length: count * each, volume: count * each * area };
}

/** Fillets on seams of this length, in the stitches that the symbol asks for, on both sides where it says so. */
export function filletLot(run: string, weld: Weld, seams: readonly number[]): WeldLot {
  const { arrow, other } = weld.symbol;
  const { size, length, pitch } = arrow!;
  const laid = (seam: number): number => (length === null || pitch === null ? seam : stitchedLength(seam, length, pitch));
  const sides = other === null ? 1 : 2;
  const sum = seams.reduce((total, seam) => total + laid(seam), 0) * sides;
  return { weld, run, count: seams.length, length: sum, volume: sum * filletArea(size ?? inches(0)) };
}
