import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { useStore } from '../../../project/store.ts';
import { useCalm } from '../use-calm.ts';
import { type BoardState, type Measuring } from '../board/board-state.ts';
import { measured } from '../board/measured.ts';
import { namedPlaces } from '../board/named-places.ts';
import { type NamedPlace } from '../board/snap.ts';

/** What is being measured, in words; its two places may be chosen by name too. */
export function MeasureBox({ state }: { readonly state: BoardState }): ReactElement | null {
  const { worked } = useDeskWindow();
  const measuring = useStore(state.measuring);
  const { laid } = useCalm(worked);
  if (measuring === null || laid === null) return null;
  const places = namedPlaces(laid.stations);
  const { from, to } = measuring;
  const sizes = from === null || to === null ? null : measured(from.at, to.at, laid.units);
  return (
    <section className="measure-box" aria-label={say('place-lay-out.measure')}>
      <h2>{say('place-lay-out.measure')}</h2>
      <PlaceChoice end="from" measuring={measuring} places={places} state={state} />
      <PlaceChoice end="to" measuring={measuring} places={places} state={state} />
      <p role="status">
        {sizes === null ? say('place-lay-out.measure-help') : (
          <>
            <strong>{sizes.straight}</strong> <span>{say('place-lay-out.measure-parts', { across: sizes.across, up: sizes.up })}</span>
          </>
        )}
      </p>
      <button type="button" onClick={() => { state.measuring.set(null); }}>{say('place-lay-out.measure-end')}</button>
    </section>
  );
}

function PlaceChoice({ end, measuring, places, state }: {
  readonly end: 'from' | 'to'; readonly measuring: Measuring; readonly places: readonly NamedPlace[]; readonly state: BoardState;
}): ReactElement {
  const now = measuring[end];
  const index = now === null ? -1 : places.findIndex((place) => place.name === now.name);
  return (
    <label>
      <span>{say(`place-lay-out.measure-${end}`)}</span>
      <select
        value={index < 0 ? '' : String(index)}
        onChange={(event) => {
          const place = places[Number(event.currentTarget.value)];
          if (place !== undefined) state.measuring.set({ ...measuring, [end]: place });
        }}
      >
        {index < 0 ? <option value="">{now === null ? say('place-lay-out.measure-none') : now.name === '' ? say('place-lay-out.measure-place') : now.name}</option> : null}
        {places.map((place, at) => <option key={place.name} value={String(at)}>{place.name}</option>)}
      </select>
    </label>
  );
}
