import { type JsonObject } from '../../core/brief/json/types.ts';
import { keepMarks } from '../../core/package/keep-marks.ts';
import { say } from '../../core/text/index.ts';
import { type Desk, type FileId } from '../../electron/bridge/desk.ts';
import { type WorkClient } from '../worker/client.ts';
import { type Asker } from './asking.ts';
import { differences } from './differences.ts';
import { present } from './history.ts';
import { type Marks } from './marks.ts';
import { hasOwnText, readText, textOf } from './project-text.ts';
import { type Session, type SessionStore } from './session.ts';

export interface SaverInput {
  readonly desk: Desk;
  readonly session: SessionStore;
  readonly work: WorkClient;
  readonly tell: (words: string) => void;
  readonly ask: Asker['ask'];
}

/** A state of the project as it is about to be written. */
interface Writing {
  readonly before: JsonObject;
  readonly text: string;
  readonly marks: Marks;
  readonly name: string;
}

/** The two ways of saving; each answers whether the project stands in a file now. */
export function saver({ desk, session, work, tell, ask }: SaverInput): { save(): Promise<boolean>; saveAs(): Promise<boolean> } {
  /** What somebody else wrote and a person has taken up: no longer news. */
  let seen: { readonly file: FileId; readonly text: string } | null = null;

  const prepare = async (open: Session): Promise<Writing> => {
    const before = present(open.history);
    const text = textOf(before);
    if (before === open.saved && hasOwnText(before)) return { before, text, marks: {}, name: open.name };
    const marks = await marksOf(text);
    return { before, text: marks === null ? text : keepMarks(text, marks), marks: marks ?? {}, name: open.name };
  };
  /** The marks of a project's pieces, or null where it has none yet. A mistake of the program is told and keeps nobody from saving. */
  const marksOf = async (text: string): Promise<Marks | null> => {
    try {
      return (await work.ask('marks', { text })).marks;
    } catch (error) {
      reportError(error);
      return null;
    }
  };
  const done = (writing: Writing, file: FileId, name: string): true => {
    const read = readText(writing.text);
    if (!read.ok) throw new Error(`a project that was written and cannot be read: ${read.faults.join('; ')}`);
    const same = hasOwnText(writing.before) && textOf(writing.before) === writing.text;
    session.markSaved(writing.before, same ? writing.before : read.held, writing.marks, file, name);
    tell(say('place-projects.saved', { name }));
    return true;
  };

  const saveAs = async (): Promise<boolean> => {
    session.settle();
    const open = session.get();
    if (open === null) return false;
    const writing = await prepare(open);
    const reply = await desk.saveProjectAs(open.name, writing.text);
    if (!reply.ok) {
      await ask('refused', { message: reply.message });
      return false;
    }
    return reply.value !== null && done(writing, reply.value.file, reply.value.name);
  };

  const changed = async (writing: Writing, file: FileId, text: string): Promise<boolean> => {
    const theirs = readText(text);
    const choice = await ask('changed', { name: writing.name, differences: theirs.ok ? differences(theirs.held, writing.before) : null });
    switch (choice) {
      case 'stay': return false;
      case 'elsewhere': return saveAs();
      case 'over':
        if (theirs.ok) {
          // Theirs is kept as a state to undo to.
          session.change(theirs.project, { label: say('place-projects.label.theirs') });
          session.change(writing.before, { label: say('place-projects.label.over') });
        }
        return write(writing, file, true);
      case 'theirs':
        if (!theirs.ok) return false;
        seen = { file, text };
        session.change(theirs.project, { label: say('place-projects.label.theirs') });
        session.fileHolds(theirs.held);
        // Ours is not in the file: it is a state to undo to.
        return false;
    }
  };
  const write = async (writing: Writing, file: FileId, force: boolean): Promise<boolean> => {
    const reply = await desk.saveProject(file, writing.text, force);
    if (!reply.ok) {
      await ask('refused', { message: reply.message });
      return false;
    }
    if (reply.value.kind === 'saved') {
      seen = null;
      return done(writing, file, writing.name);
    }
    if (seen?.file === file && seen.text === reply.value.text) return write(writing, file, true);
    return changed(writing, file, reply.value.text);
  };

  const save = async (): Promise<boolean> => {
    session.settle();
    const open = session.get();
    if (open === null) return false;
    return open.file === null ? saveAs() : write(await prepare(open), open.file, false);
  };
  return { save, saveAs };
}
