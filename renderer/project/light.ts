/** Light or dark: as the machine has it until a person says otherwise, and as they said from then on. */
import { createStore, type Store } from './store.ts';

export type Light = 'light' | 'dark';

const KEPT = 'penwright.light';

function remembered(): Light | null {
  try {
    const kept = localStorage.getItem(KEPT);
    return kept === 'light' || kept === 'dark' ? kept : null;
  } catch {
    // A browser that keeps nothing has nothing to remember.
    return null;
  }
}

const DARK = '(prefers-color-scheme: dark)';
const ofMachine = (): Light => (matchMedia(DARK).matches ? 'dark' : 'light');

/** The light that the page is seen in; setting it puts it on the page and remembers it. */
export function createLight(): Store<Light> {
  const said = remembered();
  let isSaid = said !== null;
  if (said !== null) document.documentElement.dataset['light'] = said;
  const store = createStore<Light>(said ?? ofMachine());
  matchMedia(DARK).addEventListener('change', () => { if (!isSaid) store.set(ofMachine()); });
  return {
    ...store,
    set: (next) => {
      isSaid = true;
      document.documentElement.dataset['light'] = next;
      try {
        localStorage.setItem(KEPT, next);
      } catch {
        // It holds for as long as the window is open.
      }
      store.set(next);
    },
  };
}
