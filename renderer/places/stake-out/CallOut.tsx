import { type KeyboardEvent, type ReactElement, useEffect, useRef } from 'react';
import { inches } from '../../../core/base/quantity.ts';
import { say } from '../../../core/text/index.ts';
import { printLength } from '../../../core/units/index.ts';
import { type Stakes } from '../../worker/protocol.ts';
import { holeWords } from './stake-table.ts';

export interface CallOutProps {
  readonly stakes: Stakes;
  readonly point: string | null;
  /** Points that are in the ground. */
  readonly set: readonly string[];
  onPoint(point: string): void;
  onSet(set: readonly string[]): void;
  onLeave(): void;
}

/** One point at a time in letters that are read at arm's length, for whoever holds the tapes. */
export function CallOut({ stakes, point, set, onPoint, onSet, onLeave }: CallOutProps): ReactElement | null {
  const pane = useRef<HTMLDivElement>(null);
  useEffect(() => { pane.current?.focus(); }, []);
  const { rows, units } = stakes;
  const at = Math.max(0, rows.findIndex((row) => row.point === point));
  const row = rows[at];
  if (row === undefined) return null;
  const go = (step: number): void => { onPoint(rows[(at + step + rows.length) % rows.length]?.point ?? row.point); };
  const isSet = set.includes(row.point);
  const toggle = (): void => { onSet(isSet ? set.filter((one) => one !== row.point) : [...set, row.point]); };
  const size = (value: number): string => printLength(inches(value), units);
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'ArrowRight' || event.key === 'ArrowDown' || event.key === 'PageDown') go(1);
    else if (event.key === 'ArrowLeft' || event.key === 'ArrowUp' || event.key === 'PageUp') go(-1);
    else if (event.key === 'Escape') onLeave();
    else if (event.key === 'Enter' && !(event.target instanceof HTMLButtonElement)) toggle();
    else return;
    event.preventDefault();
  };
  const ties = [['A', row.tieA] as const, ['B', row.tieB] as const, ...(row.tieC === null ? [] : [['C', row.tieC] as const])];
  const hole = holeWords(row, units);
  return (
    <div ref={pane} className="call-out" role="group" aria-label={say('place-stake-out.calling')} tabIndex={-1} onKeyDown={onKeyDown}>
      <div className="call-head">
        <button type="button" onClick={onLeave}>{say('place-stake-out.list')}</button>
        <span>{say('place-stake-out.progress', { done: rows.filter((one) => set.includes(one.point)).length, all: rows.length })}</span>
        <span className="faint">{say('place-stake-out.keys')}</span>
      </div>
      <div className="call-point" role="status">
        <strong className="call-name">{row.point}</strong>
        <div className="call-words">
          <dl className={`call-ties of-${String(ties.length)}`}>
            {ties.map(([name, tie]) => <div key={name}><dt>{say('place-stake-out.tie', { name })}</dt><dd>{size(tie)}</dd></div>)}
          </dl>
          <dl className="call-facts">
            <div><dt>{say('place-stake-out.side')}</dt><dd>{say(`place-stake-out.side.${row.baselineSide}`)}</dd></div>
            <div><dt>{say('place-stake-out.hole')}</dt><dd>{hole === '' ? say('place-stake-out.no-hole') : hole}</dd></div>
            <div><dt>{say('place-stake-out.what')}</dt><dd>{[say(`drawings.stake.${row.kind}`), row.run ?? '', row.side ?? ''].filter((part) => part !== '').join(', ')}</dd></div>
          </dl>
        </div>
      </div>
      <div className="call-steps">
        <button type="button" onClick={() => { go(-1); }}>{say('place-stake-out.before')}</button>
        <label><input type="checkbox" checked={isSet} onChange={toggle} />{say('place-stake-out.set', { point: row.point })}</label>
        <button type="button" className="main" onClick={() => { go(1); }}>{say('place-stake-out.next')}</button>
      </div>
    </div>
  );
}
