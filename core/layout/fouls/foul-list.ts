import { type PlanPoint, type Vec } from '../../base/points.ts';
import { type Foul } from '../types.ts';

/** Gathers fouls so that one kind of foul between the same two runs is told once, with its first place and how many there are. */
export interface FoulList {
  readonly add: (kind: 'foul-fence' | 'foul-path', runs: readonly [string, string], places: readonly Vec[]) => void;
  readonly list: () => readonly Foul[];
}

export function foulList(): FoulList {
  const found = new Map<string, Foul>();
  return {
    add: (kind, runs, places) => {
      const first = places[0];
      if (first === undefined) return;
      const key = `${kind} ${runs.join(' ')}`;
      const known = found.get(key);
      found.set(key, { kind, at: known?.at ?? (first as PlanPoint), measured: (known?.measured ?? 0) + places.length, runs });
    },
    list: () => [...found.values()],
  };
}
