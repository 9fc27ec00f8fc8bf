import { type Json } from '../../../core/brief/json/types.ts';
import { standingAt } from '../../../core/brief/format/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { pathSteps, valueAt } from '../../project/json-path.ts';
import { projectOf, useProject } from '../field/use-project.ts';
import { labelAt } from './part-words.ts';

export interface ListState {
  /** How many entries the file has; null: it does not say the list. */
  readonly count: number | null;
  /** Puts an entry at the end; where the file does not say the list, behind what stands for it. */
  add(entry: Json): void;
  remove(index: number): void;
  /** Changes places with the entry before or after it. */
  move(index: number, by: -1 | 1): void;
  /** Takes the whole list out of the file. */
  restore(): void;
}

const isList = (value: Json | undefined): value is readonly Json[] => Array.isArray(value);

/** A list of the open project by its path. */
export function useList(path: string): ListState {
  const { session } = useDeskWindow();
  const count = useProject((project) => {
    const value = valueAt(project, path);
    return isList(value) ? value.length : null;
  });
  const label = labelAt(path);
  const entries = (): readonly Json[] => {
    const project = projectOf(session);
    const value = valueAt(project, path);
    if (isList(value)) return value;
    const standing = standingAt(pathSteps(path), project)?.value;
    return isList(standing) ? standing : [];
  };
  const write = (next: readonly Json[] | undefined, key: 'added' | 'removed' | 'moved' | 'restored'): void => {
    session.setField(path, next, { label: say(`place-brief.${key}`, { field: label }) });
  };
  return {
    count,
    add: (entry) => { write([...entries(), entry], 'added'); },
    remove: (index) => { write(entries().filter((_, at) => at !== index), 'removed'); },
    move: (index, by) => {
      const now = entries();
      const [here, there] = [now[index], now[index + by]];
      if (here === undefined || there === undefined) return;
      write(now.with(index, there).with(index + by, here), 'moved');
    },
    restore: () => { write(undefined, 'restored'); },
  };
}
