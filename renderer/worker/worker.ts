/** The worker of the live window: it answers in the order of asking. */
import { createAnswers } from './answer.ts';
import { type AnswerMessage, type AskMessage } from './protocol.ts';
import { browserTools } from './tools.ts';

const answers = browserTools().then(createAnswers);

type Answer = Extract<AnswerMessage, { readonly ok: true }>['answer'];

const told = (message: AnswerMessage): void => { self.postMessage(message); };

async function answer({ turn, kind, ask }: AskMessage): Promise<void> {
  try {
    const all = await answers;
    // The kind and what is asked belong together by the type of the message.
    told({ turn, ok: true, answer: (all[kind] as (ask: never) => Answer)(ask as never) });
  } catch (error) {
    told({ turn, ok: false, message: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
}

self.addEventListener('message', ({ data }: MessageEvent<AskMessage>) => void answer(data));
