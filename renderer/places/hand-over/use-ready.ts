import { useDeskWindow } from '../../app/desk-window.ts';
import { present } from '../../project/history.ts';
import { useStore } from '../../project/store.ts';

/** Whether a package can be made now: the present state is laid out; it is still being worked out; it has faults; nothing is chosen. */
export type Ready = 'ready' | 'working' | 'faults' | 'nothing';

export function useReady(): Ready {
  const { session, worked } = useDeskWindow();
  const open = useStore(session);
  const { answer, project } = useStore(worked);
  if (open === null || answer === null || project !== present(open.history)) return 'working';
  return answer.laid === null ? 'faults' : 'ready';
}
