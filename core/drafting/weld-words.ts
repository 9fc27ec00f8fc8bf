import { inches } from '../base/quantity.ts';
import { printLength } from '../units/index.ts';
import { type Kit } from './kit.ts';
import { type WeldMark } from './model.ts';

/** A weld's figure as it stands in a symbol: inches or millimeters as elsewhere on the drawing, without their mark. */
const figure = (kit: Pick<Kit, 'units'>, value: number): string => printLength(inches(value), kit.units, 'inches', false).replace('"', '');

/** What stands to the left of a symbol: the size. */
export const weldSize = (kit: Pick<Kit, 'units'>, { size }: WeldMark): string | null => (size === null ? null : figure(kit, size));

/** What stands to its right: the length of a stitch and its pitch, with a dash between. */
export function weldLength(kit: Pick<Kit, 'units'>, { length, pitch }: WeldMark): string | null {
  if (length === null) return null;
  return pitch === null ? figure(kit, length) : `${figure(kit, length)}-${figure(kit, pitch)}`;
}
