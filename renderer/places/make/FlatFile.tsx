import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { EarlierIssue } from '../../parts/EarlierIssue.tsx';
import { useStore } from '../../project/store.ts';
import { type SheetTitle, type Table } from '../../worker/protocol.ts';
import { type Taken } from './taken.ts';

export interface FlatFileProps {
  readonly sheets: readonly SheetTitle[];
  readonly tables: readonly Table[];
  readonly taken: Taken;
  /** The piece that is looked at; null: none. */
  readonly mark: string | null;
  onTake(taken: Taken): void;
}

/** The labels of the drawers: the bars to cut, every drawing with its number, title and paper, then every schedule. */
export function FlatFile({ sheets, tables, taken, mark, onTake }: FlatFileProps): ReactElement {
  const compared = useStore(useDeskWindow().earlier.state);
  return (
    <nav className="flat-file" aria-label={say('place-make.file')}>
      <button type="button" className="flat-file-bars" aria-current={taken.kind === 'bars' ? 'true' : undefined} onClick={() => { onTake({ kind: 'bars' }); }}>
        <span>{say('place-make.bars')}</span>
      </button>
      <details className="flat-file-clouds">
        <summary>{say(compared.kind === 'chosen' ? 'earlier.since' : 'earlier.title', { name: compared.kind === 'chosen' ? compared.name : '' })}</summary>
        <EarlierIssue />
      </details>
      <h2>{say('place-make.drawings')}</h2>
      <ol>
        {sheets.map((sheet, index) => (
          <li key={sheet.number}>
            <button
              type="button"
              aria-current={taken.kind === 'drawing' && taken.index === index ? 'true' : undefined}
              onClick={() => { onTake({ kind: 'drawing', index }); }}
            >
              <b>{sheet.number}</b>
              <span>{sheet.title}</span>
              <small>
                {sheet.paper}
                {mark !== null && sheet.marks.includes(mark) ? <em>{say('place-make.has', { mark })}</em> : null}
              </small>
            </button>
          </li>
        ))}
      </ol>
      <h2>{say('place-make.schedules')}</h2>
      <ol>
        {tables.map((table) => (
          <li key={table.id}>
            <button
              type="button"
              aria-current={taken.kind === 'schedule' && taken.id === table.id ? 'true' : undefined}
              onClick={() => { onTake({ kind: 'schedule', id: table.id }); }}
            >
              <span>{table.title}</span>
              <small>{say('place-make.row-count', { count: table.rows.length })}</small>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
