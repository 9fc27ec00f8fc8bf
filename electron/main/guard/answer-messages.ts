import { LISTENING_CHANNEL, channelOf, NOTICES, type NoticeName, REQUESTS, type RequestName } from '../../bridge/names.ts';
import { notices, requests } from '../../bridge/messages.ts';
import { type Desk } from '../../bridge/desk.ts';
import { type Answers } from '../answers.ts';
import { type Sent } from './sender.ts';

/** What is needed of Electron's `ipcMain`. */
export interface MessageEnd {
  handle(channel: string, answer: (event: Sent, ...args: unknown[]) => Promise<unknown>): void;
  on(channel: string, hear: (event: Sent, ...args: unknown[]) => void): unknown;
}

export interface Hears {
  readonly notices: { readonly [N in NoticeName]: (...args: Readonly<Parameters<Desk[N]>>) => void };
  /** The page has begun to listen. */
  readonly listening: () => void;
}

const STRICT = { jitless: true } as const;

/**
 * Answers the page's messages. One from anybody else, or of another shape, is refused before anything is done, and says no more than
 * that; a notice is let fall. A reply of another shape is a mistake of ours and is not sent.
 */
export function answerMessages(end: MessageEnd, isOurs: (event: Sent) => boolean, answers: Answers, hears: Hears): void {
  const answer = <N extends RequestName>(name: N): void => {
    end.handle(channelOf(name), async (event, ...args) => {
      const read = isOurs(event) ? requests[name].args.safeParse(args, STRICT) : null;
      if (read?.success !== true) throw new Error(`${name}: refused`);
      return requests[name].reply.parse(await answers[name](...read.data), STRICT);
    });
  };
  const hear = <N extends NoticeName>(name: N): void => {
    end.on(channelOf(name), (event, ...args) => {
      const read = isOurs(event) ? notices[name].safeParse(args, STRICT) : null;
      if (read?.success === true) hears.notices[name](...read.data);
    });
  };
  for (const name of REQUESTS) answer(name);
  for (const name of NOTICES) hear(name);
  end.on(LISTENING_CHANNEL, (event, ...args) => {
    if (isOurs(event) && args.length === 0) hears.listening();
  });
}
