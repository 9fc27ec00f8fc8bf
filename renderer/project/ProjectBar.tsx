import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useStore } from '../project/store.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { canRedo, canUndo } from './history.ts';

/** What may be done with the project as a whole. */
export function ProjectBar(): ReactElement | null {
  const { session } = useDeskWindow();
  const open = useStore(session);
  if (open === null) return null;
  return (
    <div>
      <button type="button" disabled={!canUndo(open.history)} onClick={session.undo}>{say('place-projects.undo')}</button>
      <button type="button" disabled={!canRedo(open.history)} onClick={session.redo}>{say('place-projects.redo')}</button>
    </div>
  );
}
