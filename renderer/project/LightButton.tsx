import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { useStore } from './store.ts';

/** Turns the window from light to dark and back. */
export function LightButton(): ReactElement {
  const { light } = useDeskWindow();
  const other = useStore(light) === 'dark' ? 'light' : 'dark';
  return (
    <button type="button" title={say(`place-projects.${other}-help`)} onClick={() => { light.set(other); }}>
      {say(`place-projects.${other}`)}
    </button>
  );
}
