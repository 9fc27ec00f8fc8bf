import { inches, MM_PER_INCH, type Inches } from '../../../../core/base/quantity.ts';
import { type Table } from '../../../worker/protocol.ts';

/** A rolled piece as drawn, by the face that a straightedge lies on. */
export interface DrawnArc {
  readonly mark: string;
  readonly radius: Inches;
  readonly length: Inches;
}

/** The arc of a mark from the bend schedule; null where it has none. */
export function drawnArc(tables: readonly Table[], mark: string | null): DrawnArc | null {
  const table = tables.find(({ id }) => id === 'bends');
  const row = table === undefined || mark === null ? undefined : table.rows.find((one) => table.markColumn !== null && one[table.markColumn] === mark);
  if (table === undefined || row === undefined || mark === null) return null;
  const figure = (name: string): number => {
    const at = table.columns.findIndex((column) => column.name === name);
    return Number(row[at]) / (table.columns[at]?.unit === 'mm' ? MM_PER_INCH : 1);
  };
  const radius = figure('inside_radius');
  return { mark, radius: inches(radius), length: inches((figure('arc_length') * radius) / figure('axis_radius')) };
}
