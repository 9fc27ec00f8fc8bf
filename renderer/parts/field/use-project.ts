import { useSyncExternalStore } from 'react';
import { type Json, type JsonObject } from '../../../core/brief/json/types.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { present } from '../../project/history.ts';
import { valueAt } from '../../project/json-path.ts';
import { type SessionStore } from '../../project/session.ts';

const EMPTY: JsonObject = {};

/** The project as it stands now; empty where none is open. */
export function projectOf(session: SessionStore): JsonObject {
  const open = session.get();
  return open === null ? EMPTY : present(open.history);
}

/** Something read of the project: the part is drawn again only when that changes. `read` must give the same thing while it is the same. */
export function useProject<T extends Json | undefined>(read: (project: JsonObject) => T): T {
  const { session } = useDeskWindow();
  return useSyncExternalStore(session.subscribe, () => read(projectOf(session)));
}

/** What stands at a path of the project. */
export const useValue = (path: string): Json | undefined => useProject((project) => valueAt(project, path));
