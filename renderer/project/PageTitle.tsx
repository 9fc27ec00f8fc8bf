import { useEffect } from 'react';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { isUnsaved } from './session.ts';
import { useStore } from './store.ts';

/** The page's own title: the open file, and whether it is saved, to be told among other windows. */
export function PageTitle(): null {
  const { session } = useDeskWindow();
  const open = useStore(session);
  const unsaved = open !== null && isUnsaved(open);
  const name = open === null ? null : open.name;
  useEffect(() => {
    document.title = name === null ? say('window.name') : say(unsaved ? 'place-projects.page-unsaved' : 'place-projects.page', { name });
  }, [name, unsaved]);
  return null;
}
