/** What the window asks a person before it goes on. One question at a time. */
import { type Difference } from './differences.ts';
import { createStore, type Store } from './store.ts';

export type UnsavedChoice = 'save' | 'leave' | 'stay';
export type ChangedChoice = 'over' | 'elsewhere' | 'theirs' | 'stay';

interface Shapes {
  /** Work that would be lost. */
  readonly unsaved: { readonly ask: { readonly name: string }; readonly answer: UnsavedChoice };
  /** Somebody else has written the file. `differences` null: what they wrote is no project. */
  readonly changed: { readonly ask: { readonly name: string; readonly differences: readonly Difference[] | null }; readonly answer: ChangedChoice };
  /** A text that is no project. */
  readonly unreadable: { readonly ask: { readonly name: string; readonly faults: readonly string[] }; readonly answer: null };
  /** What could not be done. */
  readonly refused: { readonly ask: { readonly message: string }; readonly answer: null };
}

export type AskingKind = keyof Shapes;
export type Asking = { readonly [K in AskingKind]: { readonly kind: K; readonly answer: (answer: Shapes[K]['answer']) => void } & Shapes[K]['ask'] }[AskingKind];

export interface Asker {
  readonly asking: Store<Asking | null>;
  ask<K extends AskingKind>(kind: K, about: Shapes[K]['ask']): Promise<Shapes[K]['answer']>;
}

export function createAsker(): Asker {
  const asking = createStore<Asking | null>(null);
  let turn: Promise<unknown> = Promise.resolve();
  return {
    asking,
    ask: (kind, about) => {
      const answered = turn.then(() => new Promise<Shapes[typeof kind]['answer']>((done) => {
        const answer = (given: Shapes[typeof kind]['answer']): void => {
          asking.set(null);
          done(given);
        };
        // The kind, what is asked and its answer belong together by the signature.
        asking.set({ kind, answer, ...about } as unknown as Asking);
      }));
      turn = answered;
      return answered;
    },
  };
}
