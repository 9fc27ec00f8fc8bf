import { useSyncExternalStore } from 'react';
import { useDeskWindow } from '../../app/desk-window.ts';
import { type ShownFault } from '../../worker/protocol.ts';

const NONE: readonly ShownFault[] = [];

/** Every fault of the project as it was last read. Where there is none it is the same list each time, so that nothing is drawn again. */
export function useAllFaults(): readonly ShownFault[] {
  const { worked } = useDeskWindow();
  return useSyncExternalStore(worked.subscribe, () => {
    const faults = worked.get().answer?.faults ?? NONE;
    return faults.length === 0 ? NONE : faults;
  });
}

/** What is wrong at one path, in words; empty where nothing is. Drawn again only when that changes. */
export function useFault(path: string): string {
  const { worked } = useDeskWindow();
  return useSyncExternalStore(worked.subscribe, () =>
    (worked.get().answer?.faults ?? NONE).filter((fault) => fault.path === path).map(({ words }) => words).join('; '));
}
