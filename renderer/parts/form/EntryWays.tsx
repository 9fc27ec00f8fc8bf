import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { type ListState } from './use-list.ts';

/** Moves an entry of a list up or down, or removes it. The hand stays on the entry that it moved. */
export function EntryWays({ title, index, ways }: { readonly title: string; readonly index: number; readonly ways: ListState }): ReactElement {
  const last = (ways.count ?? 0) - 1;
  const move = (by: -1 | 1, from: HTMLElement): void => {
    const list = from.closest('.entries');
    ways.move(index, by);
    const moved = list?.querySelectorAll('.entry-ways')[index + by];
    const button = moved?.querySelector<HTMLButtonElement>(by < 0 ? 'button:first-child:enabled' : 'button:nth-child(2):enabled') ?? moved?.querySelector('button:enabled');
    if (button instanceof HTMLElement) button.focus();
  };
  const remove = (from: HTMLElement): void => {
    const list = from.closest('.entries');
    ways.remove(index);
    const next = list?.querySelector('.entry-add button');
    if (next instanceof HTMLElement) next.focus();
  };
  return (
    <div className="entry-ways">
      <button type="button" disabled={index === 0} aria-label={say('place-brief.up-of', { field: title })} onClick={(event) => { move(-1, event.currentTarget); }}>{say('place-brief.up')}</button>
      <button type="button" disabled={index >= last} aria-label={say('place-brief.down-of', { field: title })} onClick={(event) => { move(1, event.currentTarget); }}>{say('place-brief.down')}</button>
      <button type="button" aria-label={say('place-brief.remove-of', { field: title })} onClick={(event) => { remove(event.currentTarget); }}>{say('place-brief.remove')}</button>
    </div>
  );
}
