import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { type Table } from '../worker/protocol.ts';
import { type Sorting } from './table-rows.ts';

export interface ScheduleHeadProps {
  readonly columns: Table['columns'];
  readonly sorting: Sorting | null;
  onSort(sorting: Sorting | null): void;
}

/** Headings of a schedule, with the unit of their figures; pressed, the rows go by that column, then the other way round, then as listed. */
export function ScheduleHead({ columns, sorting, onSort }: ScheduleHeadProps): ReactElement {
  const next = (column: number): Sorting | null => {
    if (sorting?.column !== column) return { column, down: false };
    return sorting.down ? null : { column, down: true };
  };
  return (
    <thead>
      <tr aria-rowindex={1}>
        {columns.map((column, index) => {
          const here = sorting?.column === index;
          const order = here ? (sorting.down ? 'descending' : 'ascending') : 'none';
          return (
            <th key={column.name} scope="col" className={column.figure ? 'figure' : undefined} aria-sort={order}>
              <button type="button" onClick={() => { onSort(next(index)); }}>
                {column.unit === null ? columnWords(column.name) : say('place-make.column', { name: columnWords(column.name), unit: column.unit })}
                <small>{here ? say(`place-make.${order === 'descending' ? 'down' : 'up'}`) : ''}</small>
              </button>
            </th>
          );
        })}
      </tr>
    </thead>
  );
}

/** A column's name in the file, as words. */
const columnWords = (name: string): string => name.replaceAll('_', ' ');
