import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useStore } from '../project/store.ts';
import { PLACES, useDeskWindow } from './desk-window.ts';
import { useTally } from './tally.ts';

/** The six places in the order of the work; those where something is wrong say how much. */
export function PlaceList(): ReactElement {
  const { place, go } = useDeskWindow();
  const here = useStore(place);
  const tally = useTally();
  const wrong: Partial<Record<(typeof PLACES)[number], string>> = {
    ...(tally.faults > 0 ? { brief: say('window.tally.faults', { count: tally.faults }) } : {}),
    ...(tally.fix > 0 ? { check: say('window.tally.fix', { count: tally.fix }) } : {}),
  };
  return (
    <nav aria-label={say('window.places')}>
      <ol className="places">
        {PLACES.map((name) => (
          <li key={name}>
            <button type="button" aria-current={name === here ? 'page' : undefined} onClick={() => { go(name); }}>
              {say(`window.place.${name}`)}
              {wrong[name] === undefined ? null : <span className="tally">{wrong[name]}</span>}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
