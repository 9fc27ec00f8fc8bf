import { useCallback, useRef, useSyncExternalStore } from 'react';
import { type Store } from '../../project/store.ts';

/** Faster than this nobody reads words, milliseconds. */
const PAUSE = 150;

/** A store's value for words that are read: while a hand moves they follow with pauses, so that the board has the time. */
export function useCalm<T>(store: Store<T>): T {
  const told = useRef(0);
  const subscribe = useCallback((listener: () => void) => {
    let waiting: ReturnType<typeof setTimeout> | null = null;
    const tell = (): void => {
      waiting = null;
      told.current = performance.now();
      listener();
    };
    const end = store.subscribe(() => {
      const left = PAUSE - (performance.now() - told.current);
      if (waiting !== null) return;
      if (left <= 0) tell();
      else waiting = setTimeout(tell, left);
    });
    return () => {
      end();
      if (waiting !== null) clearTimeout(waiting);
    };
  }, [store]);
  return useSyncExternalStore(subscribe, store.get);
}
