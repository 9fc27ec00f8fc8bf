import { type ReactElement, useEffect, useMemo, useRef, useState } from 'react';
import { say } from '../../core/text/index.ts';
import { type Table } from '../worker/protocol.ts';
import './schedule-table.css';
import { ScheduleHead } from './ScheduleHead.tsx';
import { columnWidths, rowsBy, rowsInSight, rowsWith, type Sorting, type FigureOf } from './table-rows.ts';

export interface ScheduleTableProps {
  readonly table: Table;
  /** Column whose cell a row is chosen by; null: rows are not chosen. */
  readonly choice: number | null;
  readonly chosen: string | null;
  /** Figures by which a column is sorted where its cells are printed sizes. */
  readonly figureOf?: FigureOf;
  onChoose(value: string): void;
}

/** Pixels; the button in a row is as high. */
const ROW = 44;
/** Until the pane has told its height. */
const FIRST_PANE = 600;

/** A schedule: sorted by a column, narrowed by words, its rows made only where they are in sight. */
export function ScheduleTable({ table, choice, chosen, figureOf, onChoose }: ScheduleTableProps): ReactElement {
  const pane = useRef<HTMLDivElement>(null);
  const [words, setWords] = useState('');
  const [sorting, setSorting] = useState<Sorting | null>(null);
  const [sight, setSight] = useState({ top: 0, height: FIRST_PANE });
  const widths = useMemo(() => columnWidths(table), [table]);
  const rows = useMemo(() => rowsBy(rowsWith(table.rows, words), table.columns, sorting, figureOf), [table, words, sorting, figureOf]);
  const first = chosen === null || choice === null ? -1 : rows.findIndex((row) => row[choice] === chosen);
  const { from, to } = rowsInSight(rows.length, sight.top, sight.height, ROW);

  const look = (): void => {
    const element = pane.current;
    if (element !== null) setSight({ top: element.scrollTop, height: element.clientHeight || FIRST_PANE });
  };
  const toFirst = (): void => {
    if (pane.current !== null && first >= 0) pane.current.scrollTop = first * ROW;
  };
  useEffect(() => {
    const element = pane.current;
    if (element === null || chosen === null || choice === null) return;
    const seen = rows.slice(Math.ceil(element.scrollTop / ROW), Math.floor((element.scrollTop + element.clientHeight) / ROW));
    const at = rows.findIndex((row) => row[choice] === chosen);
    if (at >= 0 && !seen.some((row) => row[choice] === chosen)) element.scrollTop = at * ROW;
    // Only a new choice moves the rows: sorting and narrowing leave them where a person put them.
  }, [chosen, choice, rows]);

  return (
    <div className="schedule">
      <div className="schedule-tools">
        <label>
          <span>{say('place-make.filter')}</span>
          <input type="search" value={words} onChange={(event) => { setWords(event.target.value); }} />
        </label>
        <output>{say('place-make.rows', { shown: rows.length, all: table.rows.length })}</output>
        {first >= 0 ? <button type="button" onClick={toFirst}>{say('place-make.to-first', { mark: chosen ?? '' })}</button> : null}
      </div>
      <div className="schedule-pane" ref={pane} onScroll={look} tabIndex={0} role="region" aria-label={table.title}>
        <table aria-rowcount={rows.length + 1}>
          <caption className="unseen">{table.title}</caption>
          <colgroup>{widths.map((width, index) => <col key={index} style={{ width: `${String(width + 4)}ch` }} />)}</colgroup>
          <ScheduleHead columns={table.columns} sorting={sorting} onSort={setSorting} />
          <tbody>
            {from > 0 ? <tr aria-hidden="true"><td colSpan={table.columns.length} className="schedule-gap" style={{ height: from * ROW }} /></tr> : null}
            {rows.slice(from, to).map((row, index) => (
              <tr key={from + index} aria-rowindex={from + index + 2} className={choice !== null && row[choice] === chosen ? 'chosen' : undefined}>
                {row.map((cell, column) => (
                  <td key={column} className={table.columns[column]?.figure === true ? 'figure' : undefined}>
                    {column === choice && cell !== ''
                      ? <button type="button" aria-pressed={cell === chosen} onClick={() => { onChoose(cell); }}>{cell}</button>
                      : cell}
                  </td>
                ))}
              </tr>
            ))}
            {to < rows.length ? <tr aria-hidden="true"><td colSpan={table.columns.length} className="schedule-gap" style={{ height: (rows.length - to) * ROW }} /></tr> : null}
          </tbody>
        </table>
      </div>
    </div>
  );
}
