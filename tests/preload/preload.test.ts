import { describe, expect, it } from 'vitest';
import { type Desk } from '../../electron/bridge/desk.ts';
import { notices, requests } from '../../electron/bridge/messages.ts';
import { ASKED_CHANNEL, channelOf, LISTENING_CHANNEL, NOTICES, REQUESTS } from '../../electron/bridge/names.ts';
import { makeDesk, type Wire } from '../../electron/preload/make-desk.ts';

type Listener = Parameters<Wire['on']>[1];

/** A wire that writes down what goes over it. */
function wire(): { readonly wire: Wire; readonly sent: unknown[][]; readonly heard: Map<string, Listener> } {
  const sent: unknown[][] = [];
  const heard = new Map<string, Listener>();
  return {
    sent,
    heard,
    wire: {
      invoke: (...words) => { sent.push(['invoke', ...words]); return Promise.resolve('answer'); },
      send: (...words) => { sent.push(['send', ...words]); },
      on: (channel, listener) => heard.set(channel, listener),
      removeListener: (channel, listener) => { if (heard.get(channel) === listener) heard.delete(channel); },
    },
  };
}

describe('the preload', () => {
  it('puts into the page the desk that is agreed, and not a name more', () => {
    const agreed: Record<keyof Desk, true> = {
      where: true, openProject: true, recentProjects: true, openRecent: true, saveProject: true, saveProjectAs: true, keepDraft: true, dropDraft: true,
      drafts: true, takeDraft: true, throwDraft: true, choosePackage: true, writePackage: true, showPackage: true, print: true,
      tellUnsaved: true, letClose: true, onAsked: true,
    };
    expect(Object.keys(makeDesk(wire().wire)).sort()).toEqual(Object.keys(agreed).sort());
    expect([...REQUESTS, ...NOTICES, 'where', 'onAsked'].sort()).toEqual(Object.keys(agreed).sort());
  });

  it('has a schema for every message', () => {
    expect(Object.keys(requests).sort()).toEqual([...REQUESTS].sort());
    expect(Object.keys(notices).sort()).toEqual([...NOTICES].sort());
  });

  it('sends each request on a channel of its own, with its arguments', async () => {
    const { wire: line, sent } = wire();
    const desk = makeDesk(line) as unknown as Record<string, (...args: unknown[]) => Promise<unknown>>;
    for (const name of REQUESTS) expect(await desk[name]?.('a', 2)).toBe('answer');
    expect(sent).toEqual(REQUESTS.map((name) => ['invoke', channelOf(name), 'a', 2]));
    expect(new Set(sent.map(([, channel]) => channel)).size).toBe(REQUESTS.length);
  });

  it('sends each notice without waiting', () => {
    const { wire: line, sent } = wire();
    const desk = makeDesk(line);
    desk.tellUnsaved(true);
    desk.letClose(false);
    expect(sent).toEqual([['send', channelOf('tellUnsaved'), true], ['send', channelOf('letClose'), false]]);
  });

  it('says that it listens, hands over what is asked without the event, and stops', () => {
    const { wire: line, sent, heard } = wire();
    const got: unknown[][] = [];
    const stop = makeDesk(line).onAsked((...words) => { got.push(words); });
    expect(sent).toEqual([['send', LISTENING_CHANNEL]]);
    heard.get(ASKED_CHANNEL)?.({ sender: 'the machine' }, { kind: 'undo' });
    expect(got).toEqual([[{ kind: 'undo' }]]);
    stop();
    expect(heard.size).toBe(0);
  });
});
