/** The page's side of the worker. */
import { type AnswerMessage, type AskMessage, type Question, type Questions } from './protocol.ts';

export interface WorkClient {
  ask<Q extends Question>(kind: Q, ask: Questions[Q]['ask']): Promise<Questions[Q]['answer']>;
  end(): void;
}

export function createWorkClient(worker: Worker): WorkClient {
  let turn = 0;
  const waiting = new Map<number, { readonly done: (answer: AnswerMessage & { readonly ok: true }) => void; readonly failed: (error: Error) => void }>();
  worker.addEventListener('message', ({ data }: MessageEvent<AnswerMessage>) => {
    const asked = waiting.get(data.turn);
    waiting.delete(data.turn);
    if (data.ok) asked?.done(data);
    else asked?.failed(new Error(data.message));
  });
  worker.addEventListener('error', (event) => {
    for (const asked of waiting.values()) asked.failed(new Error(event.message));
    waiting.clear();
  });
  return {
    ask: (kind, ask) =>
      new Promise((done, failed) => {
        turn += 1;
        waiting.set(turn, { done: ({ answer }) => { done(answer as Questions[typeof kind]['answer']); }, failed });
        worker.postMessage({ turn, kind, ask } as AskMessage);
      }),
    end: () => { worker.terminate(); },
  };
}
