import { join } from 'node:path';
import { type OpenedProject, type Reply } from '../../bridge/desk.ts';
import { type Disk, readProject, Refused } from '../../disk/index.ts';
import { type Answers, type PathDialogs } from '../answers.ts';
import { inTurn } from '../in-turn.ts';
import { reply } from '../reply.ts';
import { type Clock, createDrafts } from './drafts.ts';
import { isProjectName, withEnding } from './endings.ts';
import { fileName } from './file-name.ts';
import { createOpenFiles, noteRead, type OpenFiles } from './open-files.ts';
import { createRecent } from './recent.ts';
import { saveProject, saveProjectAs } from './save.ts';

type ProjectAnswers = Pick<Answers, 'openProject' | 'recentProjects' | 'openRecent' | 'saveProject' | 'saveProjectAs' | 'keepDraft' | 'dropDraft' | 'drafts' | 'takeDraft' | 'throwDraft'>;

export interface Projects {
  readonly answers: ProjectAnswers;
  readonly files: OpenFiles;
  /** The page is new, or has gone and comes again: its unsaved work is offered as drafts. */
  begin(): void;
  /** Opens a file that the machine hands over: a path from its own file window or the command line. */
  openPath(path: string): Promise<Reply<OpenedProject>>;
}

export interface ProjectsNeed {
  readonly disk: Disk;
  readonly dialogs: PathDialogs;
  /** The program's own folder. */
  readonly own: string;
  readonly clock: Clock;
}

/** Projects opened and saved, the list of recent ones, and drafts: one after the other, in the order asked. */
export function createProjects({ disk, dialogs, own, clock }: ProjectsNeed): Projects {
  const files = createOpenFiles();
  const recent = createRecent(disk, join(own, 'recent.json'));
  const drafts = createDrafts(disk, files, join(own, 'drafts'), clock);
  const turn = inTurn();

  const open = async (path: string): Promise<OpenedProject> => {
    const project = await readProject(disk, '', path);
    const file = noteRead(files, project);
    await drafts.look(file.path);
    await recent.add(file.path);
    return { file: file.id, name: file.name, text: project.text };
  };
  const inOrder = <T>(action: () => Promise<T>): Promise<Reply<T>> => turn(() => reply(action));

  return {
    files,
    begin: drafts.begin,
    openPath: (path) => inOrder(() => {
      if (!isProjectName(path)) throw new Refused(path, 'shell.file-not-project');
      return open(path);
    }),
    answers: {
      // The dialog is not waited for by others: drafts are kept while a person looks for a file.
      openProject: async () => {
        const path = await dialogs.openProject();
        return path === null ? { ok: true, value: null } : inOrder(() => open(path));
      },
      recentProjects: () => turn(() => recent.list()),
      openRecent: (id) => inOrder(async () => {
        const path = await recent.find(id);
        if (path === null) throw new Refused(id, 'shell.recent-gone');
        return open(path);
      }),
      saveProject: (id, text, force) => inOrder(async () => {
        const saved = await saveProject(disk, files, id, text, force);
        if (saved.kind === 'saved') {
          await drafts.drop(id).catch(() => undefined);
          await recent.add(files.get(id).path);
        }
        return saved;
      }),
      saveProjectAs: async (suggested, text) => {
        const chosen = await dialogs.saveProject(withEnding(fileName(suggested)));
        if (chosen === null) return { ok: true, value: null };
        return inOrder(async () => {
          const file = await saveProjectAs(disk, files, chosen, text);
          await recent.add(file.path);
          return { file: file.id, name: file.name };
        });
      },
      keepDraft: (id, text) => inOrder(async () => { await drafts.keep(id === null ? null : files.get(id), text); return null; }),
      dropDraft: (id) => inOrder(async () => { await drafts.drop(id); return null; }),
      drafts: () => turn(() => drafts.left()),
      takeDraft: (id) => inOrder(() => drafts.take(id)),
      throwDraft: (id) => inOrder(async () => { await drafts.throwAway(id); return null; }),
    },
  };
}
