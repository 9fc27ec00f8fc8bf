import { type ReactElement } from 'react';
import { inches } from '../../../core/base/quantity.ts';
import { type StakeRow } from '../../../core/schedules/index.ts';
import { say } from '../../../core/text/index.ts';
import { printLength } from '../../../core/units/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { type Stakes } from '../../worker/protocol.ts';

export interface ControlPointsProps {
  readonly stakes: Stakes;
  onCall(): void;
}

/** Where the tapes are held: A, B and, where there is one, C, with the words about them and the way to their fields. */
export function ControlPoints({ stakes, onCall }: ControlPointsProps): ReactElement {
  const { go } = useDeskWindow();
  const controls = stakes.rows.filter((row) => row.kind === 'control');
  const size = (value: number): string => printLength(inches(value), stakes.units);
  const words = (row: StakeRow): string => (row.point === 'A'
    ? say('place-stake-out.a')
    : `${say('place-stake-out.place', { x: size(row.x), y: size(row.y) })}; ${say('place-stake-out.distance', { from: 'A', to: row.point })} ${size(row.tieA)}`);
  const field = (row: StakeRow): string | null => (row.point === 'A' ? null : `control.${row.point.toLowerCase()}`);
  return (
    <section className="controls" aria-label={say('place-stake-out.controls')}>
      <ul>
        {controls.map((row) => {
          const path = field(row);
          return (
            <li key={row.point}>
              <b>{row.point}</b>
              <span>{words(row)}</span>
              {path === null ? null : <button type="button" onClick={() => { go('brief', { field: path }); }}>{say('place-stake-out.change', { point: row.point })}</button>}
            </li>
          );
        })}
      </ul>
      <p>
        {stakes.note === '' ? null : <span>{stakes.note} </span>}
        <strong>{say('drawings.stake.buried')}</strong>
      </p>
      <button type="button" className="main" onClick={onCall}>{say('place-stake-out.call')}</button>
    </section>
  );
}
