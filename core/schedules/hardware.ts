import { type Brief } from '../brief/types.ts';
import { type Hardware, type HardwareItem, type Parts } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { printLength } from '../units/index.ts';

/** Bought parts of one kind and size: they have no weight or price here. */
export interface HardwareRow {
  readonly item: HardwareItem;
  /** Its size in words. */
  readonly section: string;
  readonly quantity: number;
  readonly unit: 'each';
  readonly weight: null;
  readonly price: null;
  readonly pieces: number;
}

/** The bought parts of the gates, alike ones together. */
export function hardwareRows(brief: Brief, parts: Parts): readonly HardwareRow[] {
  const rows = new Map<string, HardwareRow>();
  for (const one of parts.hardware) {
    const section = hardwareSize(brief, one);
    const key = `${one.item} ${section}`;
    const quantity = (rows.get(key)?.quantity ?? 0) + one.quantity;
    rows.set(key, { item: one.item, section, quantity, unit: 'each', weight: null, price: null, pieces: quantity });
  }
  return [...rows.values()];
}

/** The size of a bought part in words, in the project's units. */
export function hardwareSize(brief: Brief, { size }: Hardware): string {
  const print = (length: Parameters<typeof printLength>[0]): string => printLength(length, brief.units, 'inches');
  if (size === null) return say('hardware.any');
  switch (size.kind) {
    case 'barrel':
      return say('hardware.barrel', { diameter: print(size.diameter), length: print(size.length) });
    case 'round':
      return say('hardware.round', { diameter: print(size.diameter) });
    case 'clear':
      return say('hardware.clear', { gap: print(size.gap) });
    case 'length':
      return printLength(size.length, brief.units);
  }
}
