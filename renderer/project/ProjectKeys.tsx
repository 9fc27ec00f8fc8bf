import { useEffect } from 'react';
import { useDeskWindow } from '../app/desk-window.ts';
import { type Projects } from './projects.ts';

/** What a key with Control or Command does with the project; null: nothing of ours. */
export function keyAct(key: string, shift: boolean, projects: Projects): (() => void) | null {
  switch (key.toLowerCase()) {
    case 's': return shift ? () => void projects.saveAs() : () => void projects.save();
    case 'o': return shift ? null : () => void projects.openFile();
    case 'z': return shift ? projects.redo : projects.undo;
    case 'y': return shift ? null : projects.redo;
    default: return null;
  }
}

/** The keys of the project, wherever the focus is. A text that is being typed keeps its own undo. */
export function ProjectKeys(): null {
  const { projects } = useDeskWindow();
  useEffect(() => {
    const pressed = (event: KeyboardEvent): void => {
      if (event.defaultPrevented || event.altKey || event.ctrlKey === event.metaKey) return;
      const act = keyAct(event.key, event.shiftKey, projects);
      if (act === null || projects.asking.get() !== null) return;
      if (/^[zy]$/i.test(event.key) && isBeingTyped(event.target)) return;
      event.preventDefault();
      act();
    };
    window.addEventListener('keydown', pressed);
    return () => { window.removeEventListener('keydown', pressed); };
  }, [projects]);
  return null;
}

/** Whether a field holds typing that the project has not taken up: it says so in `data-typing`. */
const isBeingTyped = (target: EventTarget | null): boolean => target instanceof HTMLElement && target.dataset['typing'] !== undefined;
