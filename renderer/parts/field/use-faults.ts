import { useSyncExternalStore } from 'react';
import { useDeskWindow } from '../../app/desk-window.ts';
import { type ShownFault } from '../../work/protocol.ts';

const NONE: readonly ShownFault[] = [];

/** Every fault of the project as it was last read. */
export function useAllFaults(): readonly ShownFault[] {
  const { worked } = useDeskWindow();
  return useSyncExternalStore(worked.subscribe, () => worked.get().answer?.faults ?? NONE);
}

/** What is wrong at one path, in words; empty where nothing is. Drawn again only when that changes. */
export function useFault(path: string): string {
  const { worked } = useDeskWindow();
  return useSyncExternalStore(worked.subscribe, () =>
    (worked.get().answer?.faults ?? NONE).filter((fault) => fault.path === path).map(({ words }) => words).join('; '));
}
