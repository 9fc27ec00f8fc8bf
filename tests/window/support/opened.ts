import { packageTools } from '../../../electron/command/tools.ts';
import { createProjects, type Projects } from '../../../renderer/project/projects.ts';
import { createSession, type Session, type SessionStore } from '../../../renderer/project/session.ts';
import { createAnswers } from '../../../renderer/worker/answer.ts';
import { type WorkClient } from '../../../renderer/worker/client.ts';
import { type FakeDesk } from './fake-desk.ts';

export interface Opened {
  readonly session: SessionStore;
  readonly projects: Projects;
  readonly told: string[];
  open(): Session;
}

/** The worker's side of the window, answered where it is asked. */
export function directWork(): WorkClient {
  const answers = createAnswers(packageTools());
  // A question and its answer belong together by the type of the client.
  return { ask: (kind, ask) => Promise.resolve((answers[kind] as (ask: unknown) => never)(ask)), end: () => undefined };
}

/** Projects on a machine, without a page. */
export function projectsOn(desk: FakeDesk): Opened {
  const session = createSession();
  const told: string[] = [];
  const projects = createProjects({ desk, session, work: directWork(), tell: (words) => { told.push(words); }, opened: () => undefined });
  return {
    session, projects, told,
    open: () => {
      const now = session.get();
      if (now === null) throw new Error('no project is open');
      return now;
    },
  };
}

/** Waits until the projects ask something of this kind, and answers it. */
export async function answerNext<K extends string>(projects: Projects, kind: K, answer: unknown): Promise<void> {
  for (let turn = 0; turn < 200; turn += 1) {
    const asking = projects.asking.get();
    if (asking !== null) {
      if (asking.kind !== kind) throw new Error(`asked ${asking.kind}, not ${kind}`);
      (asking.answer as (answer: unknown) => void)(answer);
      return;
    }
    await new Promise((done) => setTimeout(done, 1));
  }
  throw new Error(`${kind} was not asked`);
}
