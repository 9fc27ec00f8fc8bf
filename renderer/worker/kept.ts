/** What the window keeps of a place while its project is open: come back to, the place shows what it showed. In memory alone. */
import { type DeskWindow, useDeskWindow } from '../app/desk-window.ts';
import { createStore, type Store, useStore } from '../project/store.ts';

interface Kept {
  /** Which opening of a project it belongs to. */
  readonly opened: number;
  readonly stores: Map<string, Store<unknown>>;
}
const keptBy = new WeakMap<DeskWindow, Kept>();

/** The store of this name; what one name holds is of one type wherever it is used. */
export function keptStore<T>(window: DeskWindow, name: string, initial: T): Store<T> {
  const opened = window.session.get()?.opened ?? 0;
  let kept = keptBy.get(window);
  if (kept?.opened !== opened) {
    kept = { opened, stores: new Map() };
    keptBy.set(window, kept);
  }
  const found = kept.stores.get(name) ?? createStore<unknown>(initial);
  kept.stores.set(name, found);
  return found as Store<T>;
}

/** A value that outlives the place that shows it. */
export function useKept<T>(name: string, initial: T): readonly [T, (next: T) => void] {
  const store = keptStore(useDeskWindow(), name, initial);
  return [useStore(store), store.set];
}
