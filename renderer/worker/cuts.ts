/** The cut list of the design that is looked at: planned beside the worker that follows the hand, and handed to it when it is done. */
import { type CutList, type CutListProgress, type SectionCuts, type SectionJob } from '../../core/shop/cut-list/index.ts';
import { createStore, type Store } from '../project/store.ts';
import { type WorkClient } from './client.ts';
import { type CutPlanner } from './cut-planner.ts';

export type CutState =
  | { readonly kind: 'none' }
  /** `sections`: those that are planned, and the best so far of the one that is being planned. */
  | { readonly kind: 'planning'; readonly sections: readonly SectionCuts[]; readonly progress: CutListProgress | null }
  | { readonly kind: 'planned'; readonly list: CutList }
  /** A person ended it. */
  | { readonly kind: 'stopped' }
  | { readonly kind: 'broken'; readonly reason: string };

export interface Cuts {
  readonly state: Store<CutState>;
  /** The list that the drawings and schedules were last given; null: none yet. */
  readonly handed: Store<CutList | null>;
  /** Sees to it that the list is of the design as it stands. A design that is cut alike keeps it. */
  follow(): Promise<void>;
  /** Ends the planning; what was planned of it goes. */
  stop(): void;
  /** Plans again what was stopped or broke. */
  again(): Promise<void>;
}

export function createCuts(work: WorkClient, newPlanner: () => CutPlanner): Cuts {
  const state = createStore<CutState>({ kind: 'none' });
  const handed = createStore<CutList | null>(null);
  let planner: CutPlanner | null = null;
  /** What is planned or was, as a text: equal jobs are one. */
  let of: string | null = null;

  const end = (next: CutState): void => {
    planner?.end();
    planner = null;
    state.set(next);
  };
  const begin = (jobs: readonly SectionJob[]): void => {
    end({ kind: 'planning', sections: [], progress: null });
    let sections: readonly SectionCuts[] = [];
    try {
      const own = newPlanner();
      planner = own;
      own.start({ kind: 'cuts', jobs }, (told) => {
        if (planner !== own) return;
        switch (told.kind) {
          case 'progress': {
            const { cuts, done } = told.progress;
            sections = [...sections.slice(0, done), cuts];
            state.set({ kind: 'planning', sections, progress: told.progress });
            return;
          }
          case 'broken':
            end({ kind: 'broken', reason: told.message });
            return;
          case 'ended':
            void hand(own, jobs, told.list);
        }
      });
    } catch (error) {
      end({ kind: 'broken', reason: error instanceof Error ? error.message : String(error) });
    }
  };
  const hand = async (own: CutPlanner, jobs: readonly SectionJob[], list: CutList): Promise<void> => {
    await work.ask('cuts', { jobs, list });
    if (planner !== own) return;
    end({ kind: 'planned', list });
    handed.set(list);
  };
  const follow = async (): Promise<void> => {
    const jobs = await work.ask('cutJobs', null);
    const text = JSON.stringify(jobs);
    if (text === of) return;
    of = text;
    begin(jobs);
  };
  return {
    state, handed, follow,
    stop: () => { if (state.get().kind === 'planning') end({ kind: 'stopped' }); },
    again: () => {
      of = null;
      return follow();
    },
  };
}
