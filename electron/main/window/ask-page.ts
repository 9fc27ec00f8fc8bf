import { type Asked } from '../../bridge/desk.ts';
import { asked as askedSchema } from '../../bridge/messages.ts';
import { ASKED_CHANNEL } from '../../bridge/names.ts';

export interface PageAsker {
  /** Asks the page something, or keeps it until the page listens. */
  ask(asked: Asked): void;
  /** The page listens. */
  listening(): void;
  /** The page is being loaded, or is gone: it no longer listens. */
  deaf(): void;
}

/** `send`: puts a message on the page's channel. */
export function createPageAsker(send: (channel: string, asked: Asked) => void): PageAsker {
  let listens = false;
  const waiting: Asked[] = [];
  return {
    ask: (asked) => {
      askedSchema.parse(asked, { jitless: true });
      if (listens) send(ASKED_CHANNEL, asked);
      else waiting.push(asked);
    },
    listening: () => {
      listens = true;
      for (const asked of waiting.splice(0)) send(ASKED_CHANNEL, asked);
    },
    deaf: () => { listens = false; },
  };
}
