import { MM_PER_INCH, pounds } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { type MaterialRow } from '../materials.ts';
import { type WeldRow } from './rows.ts';

/** The welds of each kind and size for the bill: length as laid, and filler to buy as the weight. */
export function weldMaterialRows(brief: Brief, rows: readonly WeldRow[]): readonly MaterialRow[] {
  const metric = brief.units === 'mm';
  const groups = new Map<string, WeldRow[]>();
  for (const row of rows) {
    const { kind, size } = row.weld.symbol.arrow!;
    const name = size === null ? say(`weld.kind.${kind}`) : say('weld.sized', { kind: say(`weld.kind.${kind}`), size: printLength(size, brief.units, 'inches') });
    groups.set(name, [...(groups.get(name) ?? []), row]);
  }
  return [...groups].map(([section, group]) => {
    const sum = (of: (row: WeldRow) => number): number => group.reduce((total, row) => total + of(row), 0);
    return {
      item: 'weld', section, quantity: sum(({ length }) => length) * (metric ? MM_PER_INCH / 1000 : 1 / 12), unit: metric ? 'm' : 'ft',
      weight: pounds(sum(({ filler }) => filler)), price: null, pieces: sum(({ count }) => count),
    };
  });
}
