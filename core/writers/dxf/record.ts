/** How a record of a table opens. */
import { type Drawing } from './drawing.ts';
import { type TableName } from './handles.ts';

/** Writes itself. */
export type TableRecord = () => void;

/** Opens a record of a table; a dimension style's handle has a group of its own. */
export function openRecord({ tags, fixed, handles }: Drawing, table: TableName, subclass: string, name: string, handle?: string): void {
  tags.put(0, table);
  tags.put(table === 'DIMSTYLE' ? 105 : 5, handle ?? handles.next());
  tags.put(330, fixed.table[table]);
  tags.put(100, 'AcDbSymbolTableRecord');
  tags.put(100, subclass);
  tags.put(2, name);
}
