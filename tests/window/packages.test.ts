/** The making of a package as the page sees it, with a maker and a machine stood in for. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type FolderId, type HandedFile, type Reply } from '../../electron/bridge/desk.ts';
import { createPackages, type PackageMaker } from '../../renderer/places/hand-over/packages.ts';
import { present } from '../../renderer/project/history.ts';
import { readText } from '../../renderer/project/project-text.ts';
import { createSession, isUnsaved } from '../../renderer/project/session.ts';
import { type PackageAsk, type PackageTold } from '../../renderer/worker/protocol.ts';
import { fakeDesk } from './support/fake-desk.ts';
import { examplePath } from './support/command-package.ts';

const JUNIPER = readFileSync(examplePath('juniper-flat'), 'utf8');
const FOLDER = 'folder-1' as FolderId;
const turn = (): Promise<void> => new Promise((done) => setTimeout(done, 0));
const made = (path: string, done: number): PackageTold => ({ kind: 'made', path, bytes: new Uint8Array([done]), done, total: 3 });

function start(chosen: 'somewhere' | 'nowhere' = 'somewhere') {
  const desk = fakeDesk();
  const written: { readonly files: readonly HandedFile[]; readonly kinds: readonly string[] }[] = [];
  let answer: (reply: Reply<null>) => void = () => undefined;
  const names: string[] = [];
  desk.choosePackage = (name) => {
    names.push(name);
    return Promise.resolve({ ok: true, value: chosen === 'nowhere' ? null : { folder: FOLDER, name } });
  };
  desk.writePackage = (_, files, kinds) => {
    written.push({ files: [...files], kinds });
    return new Promise((done) => { answer = done; });
  };
  const session = createSession();
  const read = readText(JUNIPER);
  if (!read.ok) throw new Error('the example is no project');
  session.open(read.project, null, 'juniper.json', read.held);
  const makers: { ask: PackageAsk | null; tell: (told: PackageTold) => void; ended: boolean }[] = [];
  const packages = createPackages(desk, session, (): PackageMaker => {
    const maker: (typeof makers)[number] = { ask: null, tell: () => undefined, ended: false };
    makers.push(maker);
    return {
      start: (ask, told) => {
        maker.ask = ask;
        maker.tell = told;
      },
      end: () => { maker.ended = true; },
    };
  });
  const maker = () => {
    const last = makers.at(-1);
    if (last === undefined) throw new Error('no maker was started');
    return last;
  };
  return { packages, session, written, names, makers, maker, answer: async (reply: Reply<null>) => { answer(reply); await turn(); } };
}

describe('the making of a package', () => {
  it('asks for the project as its file has it, and writes every file in its order once all are made', async () => {
    const { packages, written, names, maker, answer } = start();
    await packages.write({ only: null, units: 'mm' });
    expect(names).toEqual(['juniper-flat-a']);
    expect(maker().ask).toEqual({ kind: 'package', text: JUNIPER, only: null, units: 'mm' });
    expect(packages.state.get()).toMatchObject({ kind: 'making', done: 0 });
    maker().tell(made('b.txt', 1));
    maker().tell(made('a.txt', 2));
    expect(packages.state.get()).toMatchObject({ kind: 'making', path: 'a.txt', done: 2, total: 3 });
    maker().tell(made('manifest.json', 3));
    expect(written).toEqual([]);
    maker().tell({ kind: 'ended', kinds: ['report'], marks: {} });
    expect(maker().ended).toBe(true);
    expect(packages.state.get().kind).toBe('writing');
    expect(written).toEqual([{ kinds: ['report'], files: [1, 2, 3].map((byte, index) => ({ path: ['b.txt', 'a.txt', 'manifest.json'][index], bytes: new Uint8Array([byte]) })) }]);
    await answer({ ok: true, value: null });
    expect(packages.state.get()).toMatchObject({ kind: 'written', newMarks: false, target: { folder: FOLDER } });
  });

  it('gives the project the marks that were issued, in every state, and says so', async () => {
    const { packages, session, maker, answer } = start();
    session.setField('client', 'A', { label: 'client' });
    await packages.write({ only: null, units: null });
    maker().tell({ kind: 'ended', kinds: [], marks: { 'post,a': 'P1' } });
    await answer({ ok: true, value: null });
    expect(packages.state.get()).toMatchObject({ kind: 'written', newMarks: true });
    session.undo();
    const open = session.get();
    if (open === null) throw new Error('nothing is open');
    expect(present(open.history)).toMatchObject({ marks: { 'post,a': 'P1' } });
    expect(isUnsaved(open)).toBe(true);
  });

  it('is ended by a person: the maker stops and nothing is written, whatever it still tells', async () => {
    const { packages, written, maker } = start();
    await packages.write({ only: null, units: null });
    const first = maker();
    first.tell(made('a.txt', 1));
    packages.cancel();
    expect(first.ended).toBe(true);
    expect(packages.state.get()).toEqual({ kind: 'stopped' });
    first.tell(made('b.txt', 2));
    first.tell({ kind: 'ended', kinds: [], marks: {} });
    expect(written).toEqual([]);
    expect(packages.state.get()).toEqual({ kind: 'stopped' });
  });

  it('can not be ended once it is being written', async () => {
    const { packages, maker, answer } = start();
    await packages.write({ only: null, units: null });
    maker().tell({ kind: 'ended', kinds: [], marks: {} });
    packages.cancel();
    expect(packages.state.get().kind).toBe('writing');
    await answer({ ok: true, value: null });
    expect(packages.state.get().kind).toBe('written');
  });

  it('tells why the machine refused, and gives no marks then', async () => {
    const { packages, session, maker, answer } = start();
    await packages.write({ only: null, units: null });
    maker().tell({ kind: 'ended', kinds: [], marks: { 'post,a': 'P1' } });
    await answer({ ok: false, message: 'FOLDER: is not empty' });
    expect(packages.state.get()).toEqual({ kind: 'refused', message: 'FOLDER: is not empty' });
    const open = session.get();
    expect(open === null || isUnsaved(open)).toBe(false);
  });

  it('begins with a place, and with none where nowhere is chosen', async () => {
    const { packages, makers } = start('nowhere');
    await packages.write({ only: null, units: null });
    expect(makers).toEqual([]);
    expect(packages.state.get()).toEqual({ kind: 'none' });
  });

  it('is one at a time, and ends where another project is opened', async () => {
    const { packages, session, makers, maker } = start();
    await packages.write({ only: null, units: null });
    await packages.write({ only: null, units: null });
    expect(makers.length).toBe(1);
    const read = readText(JUNIPER);
    if (read.ok) session.open(read.project, null, 'other.json', read.held);
    expect(maker().ended).toBe(true);
    expect(packages.state.get()).toEqual({ kind: 'none' });
  });
});
