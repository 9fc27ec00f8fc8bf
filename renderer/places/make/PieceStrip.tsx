import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { type SheetTitle, type Table } from '../../worker/protocol.ts';
import { type Taken } from './taken.ts';
import { aboutPiece, rowsOfMark } from './about-piece.ts';

export interface PieceStripProps {
  readonly mark: string;
  readonly sheets: readonly SheetTitle[];
  readonly tables: readonly Table[];
  readonly taken: Taken;
  onTake(taken: Taken): void;
}

/** The piece that is looked at: what it is, and the ways to it in the plan, the drawings and the schedules. */
export function PieceStrip({ mark, sheets, tables, taken, onTake }: PieceStripProps): ReactElement {
  const { select, go, worked } = useDeskWindow();
  const { laid } = useStore(worked);
  const facts = aboutPiece(tables.find((table) => table.id === 'pieces') ?? null, mark, laid?.units ?? 'in');
  const shown = sheets.flatMap((sheet, index) => (sheet.marks.includes(mark) ? [{ sheet, index }] : []));
  const listed = tables.map((table) => ({ table, count: rowsOfMark(table, mark).length })).filter(({ count }) => count > 0);
  return (
    <aside className="piece-strip" aria-label={say('place-make.piece', { mark })}>
      <h2>{mark}</h2>
      <dl>
        {facts.length === 0 ? <div><dd>{say('place-make.no-piece')}</dd></div> : facts.map((fact) => (
          <div key={fact.name}><dt>{fact.name}</dt><dd>{fact.value}</dd></div>
        ))}
      </dl>
      <button type="button" onClick={() => { select({ mark: null }); }}>{say('place-make.put-back')}</button>
      <ul className="piece-ways" aria-label={say('place-make.ways')}>
        <li><button type="button" className="main" onClick={() => { go('lay-out', { mark }); }}>{say('place-make.in-plan')}</button></li>
        {listed.map(({ table, count }) => (
          <li key={table.id}>
            <button
              type="button"
              aria-current={taken.kind === 'schedule' && taken.id === table.id ? 'true' : undefined}
              onClick={() => { onTake({ kind: 'schedule', id: table.id }); }}
            >
              {say('place-make.in-schedule', { title: table.title, count })}
            </button>
          </li>
        ))}
        {shown.map(({ sheet, index }) => (
          <li key={sheet.number}>
            <button
              type="button"
              aria-current={taken.kind === 'drawing' && taken.index === index ? 'true' : undefined}
              title={sheet.title}
              onClick={() => { onTake({ kind: 'drawing', index }); }}
            >
              {sheet.number}
            </button>
          </li>
        ))}
      </ul>
    </aside>
  );
}
