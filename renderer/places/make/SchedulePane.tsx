import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { ScheduleTable } from '../../parts/ScheduleTable.tsx';
import { type Asked } from '../../worker/asked.ts';
import { type Table } from '../../worker/protocol.ts';

export interface SchedulePaneProps {
  readonly tables: Asked<readonly Table[]>;
  readonly id: string;
  readonly mark: string | null;
}

/** One schedule, its piece marks to be chosen. */
export function SchedulePane({ tables, id, mark }: SchedulePaneProps): ReactElement {
  const { select } = useDeskWindow();
  const table = tables.answer?.find((one) => one.id === id);
  if (tables.broken !== null) return <p role="alert" className="make-empty attention">{say('place-make.broken', { reason: tables.broken })}</p>;
  if (table === undefined) return <p className="make-empty">{say(tables.answer === null ? 'place-make.working' : 'place-make.gone')}</p>;
  const shown = (
    <ScheduleTable
      key={id}
      table={table}
      choice={table.markColumn}
      chosen={mark}
      onChoose={(value) => { select({ mark: value === mark ? null : value }); }}
    />
  );
  if (table.notes === undefined) return shown;
  return (
    <div className="schedule-noted">
      <ul aria-label={say('place-make.refused')}>{table.notes.map((note) => <li key={note}>{note}</li>)}</ul>
      {shown}
    </div>
  );
}
