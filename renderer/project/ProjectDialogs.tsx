import { type ReactElement } from 'react';
import { useDeskWindow } from '../app/desk-window.ts';
import { ChangedDialog } from './ChangedDialog.tsx';
import { RefusedDialog } from './RefusedDialog.tsx';
import { useStore } from './store.ts';
import { UnreadableDialog } from './UnreadableDialog.tsx';
import { UnsavedDialog } from './UnsavedDialog.tsx';

/** What the window asks at this moment, if anything. */
export function ProjectDialogs(): ReactElement | null {
  const { projects } = useDeskWindow();
  const asking = useStore(projects.asking);
  switch (asking?.kind) {
    case undefined: return null;
    case 'unsaved': return <UnsavedDialog {...asking} />;
    case 'changed': return <ChangedDialog {...asking} />;
    case 'unreadable': return <UnreadableDialog {...asking} />;
    case 'refused': return <RefusedDialog {...asking} />;
  }
}
