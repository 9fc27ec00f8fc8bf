/** Opening, saving and leaving a project: what every way of asking for it (button, key, menu) comes to. */
import { type JsonObject } from '../../core/brief/json/types.ts';
import { say } from '../../core/text/index.ts';
import { type Desk, type OpenedProject, type Reply } from '../../electron/bridge/desk.ts';
import { type WorkClient } from '../worker/client.ts';
import { type Asker, createAsker } from './asking.ts';
import { present } from './history.ts';
import { keepDrafts } from './drafts.ts';
import { readText } from './project-text.ts';
import { saver } from './save.ts';
import { isUnsaved, type SessionStore } from './session.ts';
import { createStore, type Store } from './store.ts';

export interface Projects {
  readonly asking: Asker['asking'];
  /** Whether the beginning is shown though a project is open. */
  readonly beginning: Store<boolean>;
  begin(): void;
  /** From the beginning to the project that is still open. */
  back(): void;
  /** Begins with a text that has no file: an example, or the empty brief. */
  openNew(text: string, name: string): Promise<void>;
  openFile(): Promise<void>;
  openRecent(id: string): Promise<void>;
  takeDraft(id: string, name: string): Promise<void>;
  save(): Promise<void>;
  saveAs(): Promise<void>;
  undo(): void;
  redo(): void;
  /** Says in words what could not be done. */
  refuse(message: string): Promise<void>;
  end(): void;
}

export interface ProjectsInput {
  readonly desk: Desk;
  readonly session: SessionStore;
  readonly work: WorkClient;
  readonly tell: (words: string) => void;
  /** Called when another project has been opened. */
  readonly opened: () => void;
}

export function createProjects({ desk, session, work, tell, opened }: ProjectsInput): Projects {
  const { asking, ask } = createAsker();
  const beginning = createStore(false);
  const drafts = keepDrafts(session, desk, tell);
  const { save, saveAs } = saver({ desk, session, work, tell, ask });
  const refuse = async (message: string): Promise<void> => { await ask('refused', { message }); };

  let busy = false;
  /** One thing at a time: what is asked while another is under way is let be. */
  const alone = async (act: () => Promise<unknown>): Promise<boolean> => {
    if (busy) return false;
    busy = true;
    try {
      await act();
    } finally {
      busy = false;
    }
    return true;
  };

  /** Whether the open project may be left: it is saved, or a person lets its changes go. */
  const mayLeave = async (): Promise<boolean> => {
    const open = session.get();
    if (open === null || !isUnsaved(open)) return true;
    const choice = await ask('unsaved', { name: open.name });
    if (choice === 'save') return save();
    return choice === 'leave';
  };
  const put = (project: JsonObject, file: OpenedProject['file'] | null, name: string, saved: JsonObject | null): void => {
    session.open(project, file, name, saved);
    beginning.set(false);
    opened();
  };
  const openText = async (text: string, file: OpenedProject['file'] | null, name: string): Promise<void> => {
    const read = readText(text);
    if (!read.ok) await ask('unreadable', { name, faults: read.faults });
    else put(read.project, file, name, read.held);
  };
  const openReply = async (reply: Reply<OpenedProject | null>): Promise<void> => {
    if (!reply.ok) await refuse(reply.message);
    else if (reply.value !== null) await openText(reply.value.text, reply.value.file, reply.value.name);
  };
  const takeUp = async (id: string, name: string): Promise<void> => {
    const reply = await desk.takeDraft(id);
    if (!reply.ok) {
      await refuse(reply.message);
      return;
    }
    const { project, text } = reply.value;
    const draft = readText(text);
    if (!draft.ok) {
      await ask('unreadable', { name, faults: draft.faults });
      return;
    }
    const file = project === null ? null : readText(project.text);
    if (project === null || file?.ok !== true) put(draft.project, project?.file ?? null, project?.name ?? name, null);
    else {
      // Undo leads back to what the file holds.
      put(file.project, project.file, project.name, file.held);
      session.change(draft.project, { label: say('place-projects.label.draft') });
    }
  };
  const close = async (): Promise<void> => {
    const leave = await mayLeave();
    if (leave) await drafts.drop();
    desk.letClose(leave);
  };

  const leaveFor = async (then: () => Promise<unknown>): Promise<void> => {
    await alone(async () => { if (await mayLeave()) await then(); });
  };
  const undo = (): void => { session.undo(); };
  const redo = (): void => { session.redo(); };
  const openFile = (): Promise<void> => leaveFor(async () => { await openReply(await desk.openProject()); });
  const begin = (): void => { beginning.set(true); };
  const saveAlone = async (): Promise<void> => { await alone(save); };
  const saveAsAlone = async (): Promise<void> => { await alone(saveAs); };

  const unlisten = desk.onAsked((asked) => {
    switch (asked.kind) {
      case 'new': begin(); return;
      case 'open': void openFile(); return;
      case 'save': void saveAlone(); return;
      case 'save-as': void saveAsAlone(); return;
      case 'undo': undo(); return;
      case 'redo': redo(); return;
      case 'opened': void leaveFor(() => openReply({ ok: true, value: asked.project })); return;
      case 'close': void alone(close).then((done) => { if (!done) desk.letClose(false); }); return;
    }
  });
  const tellUnsaved = session.subscribe(() => {
    const open = session.get();
    desk.tellUnsaved(open !== null && isUnsaved(open));
  });

  return {
    asking, beginning, begin, undo, redo, openFile, refuse,
    back: () => { beginning.set(false); },
    openNew: (text, name) => leaveFor(() => openText(text, null, name)),
    openRecent: (id) => leaveFor(async () => { await openReply(await desk.openRecent(id)); }),
    takeDraft: (id, name) => leaveFor(() => takeUp(id, name)),
    save: saveAlone,
    saveAs: saveAsAlone,
    end: () => {
      unlisten();
      tellUnsaved();
      drafts.end();
    },
  };
}

/** What is shown of the open project, for those who only look. */
export const shownProject = (session: SessionStore): JsonObject | null => {
  const open = session.get();
  return open === null ? null : present(open.history);
};
