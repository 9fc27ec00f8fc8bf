import { useSyncExternalStore } from 'react';

/** Something that the window shows and that changes: whoever listens is told. */
export interface Store<T> {
  get(): T;
  set(next: T): void;
  subscribe(listener: () => void): () => void;
}

export function createStore<T>(initial: T): Store<T> {
  let value = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set: (next) => {
      if (Object.is(next, value)) return;
      value = next;
      for (const listener of [...listeners]) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}

/** The value of a store in a component, which is drawn again when it changes. */
export const useStore = <T>(store: Store<T>): T => useSyncExternalStore(store.subscribe, store.get);
