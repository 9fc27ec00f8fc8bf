import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { type BoardState, type Shows } from './board/board-state.ts';
import { CLOSER, fitWhole, zoomBoard } from './board/board-moves.ts';

const SHOWN: readonly (keyof Shows)[] = ['sizes', 'marks', 'sights', 'places'];

/** Below the sheet, as the legend of a drawing: what is shown on it, how it is looked at, and measuring. */
export function Legend({ state }: { readonly state: BoardState }): ReactElement {
  const { worked } = useDeskWindow();
  const shows = useStore(state.shows);
  const measuring = useStore(state.measuring) !== null;
  return (
    <div className="legend" role="group" aria-label={say('place-lay-out.legend')}>
      <fieldset>
        <legend>{say('place-lay-out.shown')}</legend>
        {SHOWN.map((name) => (
          <label key={name}>
            <input type="checkbox" checked={shows[name]} onChange={(event) => { state.shows.set({ ...shows, [name]: event.currentTarget.checked }); }} />
            {say(`place-lay-out.shown.${name}`)}
          </label>
        ))}
      </fieldset>
      <button type="button" aria-pressed={measuring} aria-keyshortcuts="M" onClick={() => { state.measuring.set(measuring ? null : { from: null, to: null }); }}>
        {say('place-lay-out.measure')}
      </button>
      <span className="legend-moves">
        <button type="button" aria-keyshortcuts="-" onClick={() => { zoomBoard(state.view, state.size(), 1 / CLOSER); }}>{say('place-lay-out.farther')}</button>
        <button type="button" aria-keyshortcuts="+" onClick={() => { zoomBoard(state.view, state.size(), CLOSER); }}>{say('place-lay-out.closer')}</button>
        <button type="button" aria-keyshortcuts="0" onClick={() => { fitWhole(state, worked.get().laid?.picture ?? null); }}>{say('place-lay-out.whole')}</button>
      </span>
    </div>
  );
}
