/** What a place asks of the worker: only while somebody looks at it, and again only after the design has changed. */
import { useEffect } from 'react';
import { type JsonObject } from '../../core/brief/json/types.ts';
import { type CutList } from '../../core/shop/cut-list/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { useStore } from '../project/store.ts';
import { keptStore } from './kept.ts';
import { type EarlierState } from './earlier.ts';
import { type Question, type Questions } from './protocol.ts';

export interface Asked<Answer> {
  /** The last answer, of an earlier state of the project while a newer one is awaited; null: none yet. */
  readonly answer: Answer | null;
  /** The state of the project that `answer` is about. */
  readonly of: JsonObject | null;
  /** The cut list that it was given with, where it shows one. */
  readonly cuts: CutList | null;
  /** The issue that it was compared with, where it shows the drawings. */
  readonly since: EarlierState | null;
  readonly waiting: boolean;
  /** A mistake in the program that kept the answer away, in its own words. */
  readonly broken: string | null;
}

const NOT_YET: Asked<never> = { answer: null, of: null, cuts: null, since: null, waiting: false, broken: null };

/** What shows the cut list, or follows it in the set. */
const WITH_CUTS: readonly Question[] = ['sheets', 'sheet', 'tables', 'stakes'];

/** The answer to a question about the design; not asked while it is not `wanted`. */
export function useAsked<Q extends Question>(kind: Q, ask: Questions[Q]['ask'], wanted = true): Asked<Questions[Q]['answer']> {
  const deskWindow = useDeskWindow();
  const { work } = deskWindow;
  const { laidProject } = useStore(deskWindow.worked);
  const store = keptStore<Asked<Questions[Q]['answer']>>(deskWindow, `asked ${kind} ${JSON.stringify(ask)}`, NOT_YET);
  const asked = useStore(store);
  const handed = useStore(deskWindow.cuts.handed);
  const cuts = WITH_CUTS.includes(kind) ? handed : null;
  const compared = useStore(deskWindow.earlier.state);
  const since = WITH_CUTS.includes(kind) ? compared : null;
  const stale = wanted && laidProject !== null && (asked.of !== laidProject || asked.cuts !== cuts || asked.since !== since) && !asked.waiting;
  useEffect(() => {
    if (!stale || store.get().waiting) return;
    store.set({ ...store.get(), waiting: true });
    work.ask(kind, ask).then(
      (answer) => { store.set({ answer, of: laidProject, cuts, since, waiting: false, broken: null }); },
      (error: unknown) => { store.set({ ...store.get(), of: laidProject, cuts, since, waiting: false, broken: error instanceof Error ? error.message : String(error) }); },
    );
  }, [stale, store, work, kind, ask, laidProject, cuts, since]);
  return asked;
}
