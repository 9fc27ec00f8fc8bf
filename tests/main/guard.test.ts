import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Answers } from '../../electron/main/answers.ts';
import { channelOf, LISTENING_CHANNEL, NOTICES, REQUESTS } from '../../electron/bridge/names.ts';
import { answerMessages, isFromPage, type MessageEnd } from '../../electron/main/guard/index.ts';
import { type Sent } from '../../electron/main/guard/sender.ts';
import { answerFrom, isPageAddress } from '../../electron/main/scheme.ts';
import { listPage } from '../../electron/page/index.ts';

const frame = { url: 'penwright://window/index.html', frameToken: 'main' };
const page = { mainFrame: frame, isDestroyed: () => false };

describe('a message is taken from', () => {
  it('the main frame of our page alone', () => {
    expect(isFromPage({ sender: page, senderFrame: frame }, page)).toBe(true);
    const wrong: readonly (readonly [string, Sent, typeof page | null])[] = [
      ['no window', { sender: page, senderFrame: frame }, null],
      ['another page', { sender: { ...page }, senderFrame: frame }, page],
      ['a frame within the page', { sender: page, senderFrame: { url: frame.url, frameToken: 'inner' } }, page],
      ['a frame that is gone', { sender: page, senderFrame: null }, page],
      ['a page that is gone', { sender: page, senderFrame: frame }, { ...page, isDestroyed: () => true }],
    ];
    for (const [name, sent, ours] of wrong) expect([name, isFromPage(sent, ours)]).toEqual([name, false]);
    for (const url of ['https://window/index.html', 'penwright://other/index.html', 'penwright:window', 'file:///index.html', 'about:blank', '', 'blob:penwright://window/1']) {
      const elsewhere = { mainFrame: { url, frameToken: 'main' }, isDestroyed: () => false };
      expect([url, isFromPage({ sender: elsewhere, senderFrame: elsewhere.mainFrame }, elsewhere)]).toEqual([url, false]);
    }
  });
});

/** The messages' end with every answer written down; each says yes. */
function end() {
  const handlers = new Map<string, (event: Sent, ...args: unknown[]) => Promise<unknown>>();
  const hearers = new Map<string, (event: Sent, ...args: unknown[]) => void>();
  const done: unknown[][] = [];
  const replies: Record<string, unknown> = { recentProjects: [], drafts: [], saveProject: { ok: true, value: { kind: 'saved' } }, openRecent: { ok: false, message: 'gone' }, takeDraft: { ok: false, message: 'gone' } };
  const answers = Object.fromEntries(REQUESTS.map((name) => [name, (...args: unknown[]) => { done.push([name, ...args]); return Promise.resolve(replies[name] ?? { ok: true, value: null }); }])) as unknown as Answers;
  const messages: MessageEnd = { handle: (channel, answer) => { handlers.set(channel, answer); }, on: (channel, hear) => hearers.set(channel, hear) };
  answerMessages(messages, (event) => isFromPage(event, page), answers, {
    notices: { tellUnsaved: (...args) => { done.push(['tellUnsaved', ...args]); }, letClose: (...args) => { done.push(['letClose', ...args]); } },
    listening: () => { done.push(['listening']); },
  });
  return {
    done,
    replies,
    ask: (name: (typeof REQUESTS)[number], args: readonly unknown[], event: Sent = { sender: page, senderFrame: frame }) => handlers.get(channelOf(name))!(event, ...args),
    tell: (channel: string, args: readonly unknown[], event: Sent = { sender: page, senderFrame: frame }) => { hearers.get(channel)!(event, ...args); },
  };
}

const file = 'file-0123456789abcdef';
const bytes = Uint8Array.of(1, 2, 3);

/** For each request arguments that are right, and some that are wrong. */
const cases: Readonly<Record<(typeof REQUESTS)[number], { readonly right: readonly unknown[]; readonly wrong: readonly (readonly unknown[])[] }>> = {
  openProject: { right: [], wrong: [['a path'], [null]] },
  recentProjects: { right: [], wrong: [[1]] },
  openRecent: { right: ['recent-0a'], wrong: [[], ['a/path'], ['recent-../x'], [7], ['recent-0a', 1], ['file-0a']] },
  saveProject: { right: [file, 'text', false], wrong: [[file, 'text'], ['/etc/passwd', 'text', false], [file, 7, false], [file, 'text', 'yes'], [null, 'text', false], ['folder-0a', 'text', false], [file, 'x'.repeat(16 * 1024 * 1024 + 1), false]] },
  saveProjectAs: { right: ['yard', 'text'], wrong: [['yard'], [1, 'text'], ['x'.repeat(301), 'text'], [{ toString: () => 'yard' }, 'text']] },
  keepDraft: { right: [null, 'text'], wrong: [[undefined, 'text'], ['path', 'text'], [file]] },
  dropDraft: { right: [file], wrong: [[], ['path'], [0]] },
  drafts: { right: [], wrong: [['draft-0a']] },
  takeDraft: { right: ['draft-0a'], wrong: [['draft-'], ['draft-0a/../x'], [null]] },
  throwDraft: { right: ['draft-0a'], wrong: [['draft-XY'], [file]] },
  choosePackage: { right: ['Yard'], wrong: [[], [['Yard']]] },
  writePackage: {
    right: ['folder-0a', [{ path: 'manifest.json', bytes }], ['drawings']],
    wrong: [['/tmp', [{ path: 'manifest.json', bytes }], []], ['folder-0a', [], []], ['folder-0a', [{ path: 'x', bytes: 'text' }], []], ['folder-0a', [{ path: 'x', bytes, mode: 7 }], []], ['folder-0a', [{ path: 'x', bytes }]], ['folder-0a', [{ path: 1, bytes }], []]],
  },
  showPackage: { right: ['folder-0a'], wrong: [[], ['/'], ['file-0a']] },
  print: { right: [bytes, 'all.pdf'], wrong: [['text', 'all.pdf'], [[1, 2], 'all.pdf'], [bytes], [bytes, 1]] },
};

describe('each message', () => {
  it.each(REQUESTS)('%s is answered where it is right', async (name) => {
    const { ask, done, replies } = end();
    expect(await ask(name, cases[name].right)).toEqual(replies[name] ?? { ok: true, value: null });
    expect(done).toEqual([[name, ...cases[name].right]]);
  });

  it.each(REQUESTS)('%s of another shape is refused, and nothing is done', async (name) => {
    const { ask, done } = end();
    for (const args of cases[name].wrong) await expect(ask(name, args)).rejects.toThrow(`${name}: refused`);
    expect(done).toEqual([]);
  });

  it.each(REQUESTS)('%s from anybody else is refused, and nothing is done', async (name) => {
    const { ask, done } = end();
    const strangers: Sent[] = [{ sender: page, senderFrame: null }, { sender: page, senderFrame: { url: frame.url, frameToken: 'inner' } }, { sender: {}, senderFrame: frame }];
    for (const stranger of strangers) await expect(ask(name, cases[name].right, stranger)).rejects.toThrow(`${name}: refused`);
    expect(done).toEqual([]);
  });

  it('of those without an answer is heard where it is right and from us, else let fall', () => {
    const { tell, done } = end();
    for (const name of NOTICES) {
      for (const args of [[], [1], ['true'], [true, true], [null]]) tell(channelOf(name), args);
      tell(channelOf(name), [true], { sender: page, senderFrame: { url: frame.url, frameToken: 'inner' } });
      tell(channelOf(name), [true]);
    }
    tell(LISTENING_CHANNEL, ['more']);
    tell(LISTENING_CHANNEL, [], { sender: {}, senderFrame: frame });
    tell(LISTENING_CHANNEL, []);
    expect(done).toEqual([['tellUnsaved', true], ['letClose', true], ['listening']]);
  });

  it('is not answered with what is not agreed', async () => {
    const { ask, replies } = end();
    replies['openProject'] = { ok: true, value: { file, name: 'a', text: 'b', path: 'a secret' } };
    await expect(ask('openProject', [])).rejects.toThrow();
    replies['drafts'] = [{ id: 'draft-0a' }];
    await expect(ask('drafts', [])).rejects.toThrow();
  });
});

describe('the window\'s protocol', () => {
  it('is one address alone', () => {
    expect(isPageAddress('penwright://window/assets/a.js')).toBe(true);
    for (const address of ['penwright://windows/', 'penwright://window.example/', 'http://window/', 'penwright:/window/', 'x', 'penwright://user@other/']) expect([address, isPageAddress(address)]).toEqual([address, false]);
  });

  it('serves the files of the page with the strict policy, and nothing else', async () => {
    const home = await mkdtemp(join(tmpdir(), 'penwright-'));
    try {
      await writeFile(join(home, 'index.html'), '<!doctype html>');
      const answer = answerFrom(listPage(home));
      const get = (url: string, method = 'GET') => answer({ url, method });
      const served = await get('penwright://window/index.html');
      expect([served.status, await served.text(), served.headers.get('content-type')]).toEqual([200, '<!doctype html>', 'text/html; charset=utf-8']);
      expect(served.headers.get('content-security-policy')).toMatch(/^default-src 'none'; script-src 'self';/);
      for (const path of ['../x', '%2e%2e/x', '..%2fx', 'none', 'index.html/../../x']) {
        const refused = await get(`penwright://window/${path}`);
        expect([path, refused.status, await refused.text()]).toEqual([path, 404, '']);
        expect(refused.headers.get('content-security-policy')).toMatch("default-src 'none'");
      }
      expect((await get('penwright://other/index.html')).status).toBe(403);
      expect((await get('penwright://window/index.html', 'POST')).status).toBe(403);
    } finally {
      await rm(home, { recursive: true });
    }
  });
});
