/** The issue that the drawings are compared with: chosen by a person, for as long as the project is open. */
import { createStore, type Store } from '../project/store.ts';
import { type WorkClient } from './client.ts';

export type EarlierState =
  | { readonly kind: 'none' }
  /** `text`: its project file. */
  | { readonly kind: 'chosen'; readonly name: string; readonly text: string }
  | { readonly kind: 'refused'; readonly name: string; readonly reason: string };

export interface Earlier {
  readonly state: Store<EarlierState>;
  /** Takes a project file to compare with; one that can't be laid out is refused, and what stood before goes. */
  choose(name: string, text: string): Promise<void>;
  refuse(name: string, reason: string): Promise<void>;
  drop(): Promise<void>;
}

export function createEarlier(work: WorkClient): Earlier {
  const state = createStore<EarlierState>({ kind: 'none' });
  /** The worker is told first: who sees the state asks it for drawings. */
  const put = async (text: string | null, next: (reasons: readonly string[]) => EarlierState): Promise<void> => {
    const { faults } = await work.ask('since', { text });
    state.set(next(faults.map(({ path, words }) => (path === '' ? words : `${path}: ${words}`))));
  };
  return {
    state,
    choose: (name, text) => put(text, (reasons) => (reasons.length === 0 ? { kind: 'chosen', name, text } : { kind: 'refused', name, reason: reasons.join('; ') })),
    refuse: (name, reason) => put(null, () => ({ kind: 'refused', name, reason })),
    drop: async () => {
      if (state.get().kind !== 'none') await put(null, () => ({ kind: 'none' }));
    },
  };
}
