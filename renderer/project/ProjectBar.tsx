import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { canRedo, canUndo, redoLabel, undoLabel } from './history.ts';
import { LightButton } from './LightButton.tsx';
import './project-bar.css';
import { useStore } from './store.ts';

/** What may be done with the project as a whole. */
export function ProjectBar(): ReactElement | null {
  const { session, projects } = useDeskWindow();
  const open = useStore(session);
  if (open === null) return null;
  const { history } = open;
  const undoWords = canUndo(history) ? say('place-projects.undo-what', { what: undoLabel(history) }) : undefined;
  const redoWords = canRedo(history) ? say('place-projects.redo-what', { what: redoLabel(history) }) : undefined;
  return (
    <div className="project-bar" role="toolbar" aria-label={say('place-projects.bar')}>
      <button type="button" onClick={projects.begin}>{say('place-projects.new')}</button>
      <button type="button" onClick={() => void projects.openFile()}>{say('place-projects.open')}</button>
      <button type="button" onClick={() => void projects.save()}>{say('place-projects.save')}</button>
      <button type="button" onClick={() => void projects.saveAs()}>{say('place-projects.save-as')}</button>
      <button type="button" disabled={!canUndo(history)} aria-label={undoWords} title={undoWords} onClick={projects.undo}>
        <span>{say('place-projects.undo')}</span>
        {undoWords === undefined ? null : <small>{undoLabel(history)}</small>}
      </button>
      <button type="button" disabled={!canRedo(history)} aria-label={redoWords} title={redoWords} onClick={projects.redo}>
        <span>{say('place-projects.redo')}</span>
        {redoWords === undefined ? null : <small>{redoLabel(history)}</small>}
      </button>
      <LightButton />
    </div>
  );
}
