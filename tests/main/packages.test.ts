import { mkdir, readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type HandedFile, type FolderId } from '../../electron/bridge/desk.ts';
import { nodeDisk } from '../../electron/disk/index.ts';
import { createPackages, createPrint, isPackagePath } from '../../electron/main/packages/index.ts';
import { inTemporaryFolder, picture, smallPackage, snapshot } from '../disk/support/packages.ts';
import { value } from './support/desk.ts';

const handed = (word: string, kinds: Parameters<typeof smallPackage>[1] = ['drawings', 'schedules']): HandedFile[] => smallPackage(word, kinds).map(({ path, bytes }) => ({ path, bytes }));
const KINDS = ['drawings', 'schedules'];

function packages(chooses: string | null, projects: readonly string[] = []) {
  const shown: string[] = [];
  const dialogs = { openProject: () => Promise.resolve(null), saveProject: () => Promise.resolve(null), packageFolder: () => Promise.resolve(chooses) };
  return { shown, answers: createPackages({ disk: nodeDisk, dialogs, reveal: (path) => { shown.push(path); }, projects: () => projects }) };
}

describe('the place of a package', () => {
  it('is the chosen folder where it is new, empty or a package, else a folder in it', () => inTemporaryFolder(async (home) => {
    await mkdir(join(home, 'empty'));
    await mkdir(join(home, 'full'));
    await writeFile(join(home, 'full', 'mine.txt'), 'mine');
    await mkdir(join(home, 'package'));
    await writeFile(join(home, 'package', 'manifest.json'), '{}');
    const names: (string | null)[] = [];
    for (const name of ['new', 'empty', 'full', 'package']) names.push(value(await packages(join(home, name)).answers.choosePackage('../Juniper: Flat'))?.name ?? null);
    expect(names).toEqual(['new', 'empty', 'Juniper Flat', 'package']);
    expect(await packages(null).answers.choosePackage('x')).toEqual({ ok: true, value: null });
  }));
});

describe('a package is written', () => {
  it('whole, over an earlier one, and shown', () => inTemporaryFolder(async (home) => {
    const { answers, shown } = packages(join(home, 'out'));
    const { folder } = value(await answers.choosePackage('x'))!;
    expect(await answers.showPackage(folder)).toMatchObject({ ok: false });
    for (const word of ['first', 'second']) {
      expect(await answers.writePackage(folder, handed(word), KINDS)).toEqual({ ok: true, value: null });
      expect(await snapshot(join(home, 'out'))).toEqual(picture(smallPackage(word)));
    }
    expect(await readdir(home)).toEqual(['out']);
    expect(await answers.showPackage(folder)).toEqual({ ok: true, value: null });
    expect(shown).toEqual([join(home, 'out', 'manifest.json')]);
  }));

  it('never over a fuller one, a person\'s own files, or where the project lies', () => inTemporaryFolder(async (home) => {
    const { answers } = packages(join(home, 'out'));
    const { folder } = value(await answers.choosePackage('x'))!;
    value(await answers.writePackage(folder, handed('first'), KINDS));
    const refused = async (files: HandedFile[], kinds: string[], part: string) =>
      expect(await answers.writePackage(folder, files, kinds)).toMatchObject({ ok: false, message: expect.stringContaining(part) as string });
    await refused(handed('lesser', ['drawings']), ['drawings'], 'holds a fuller package');
    await writeFile(join(home, 'out', 'mine.txt'), 'mine');
    await refused(handed('second'), KINDS, 'mine.txt');
    expect(await readFile(join(home, 'out', 'mine.txt'), 'utf8')).toBe('mine');
    const near = packages(join(home, 'out'), [join(home, 'out', 'yard.penwright.json')]);
    const again = value(await near.answers.choosePackage('x'))!;
    expect(await near.answers.writePackage(again.folder, handed('second'), KINDS)).toMatchObject({ ok: false, message: expect.stringContaining('holds the project file') as string });
  }));

  it('only as its manifest tells', () => inTemporaryFolder(async (home) => {
    const { answers } = packages(join(home, 'out'));
    const { folder } = value(await answers.choosePackage('x'))!;
    const good = handed('first');
    const wrong: HandedFile[][] = [
      good.filter(({ path }) => path !== 'manifest.json'),
      good.slice(1),
      [...good, { path: 'report/more.pdf', bytes: Uint8Array.of(1) }],
      good.map((file) => (file.path === 'schedules/first.csv' ? { ...file, bytes: Uint8Array.of(1) } : file)),
      good.map((file) => (file.path === 'manifest.json' ? { ...file, bytes: Uint8Array.of(0x7b) } : file)),
    ];
    for (const files of wrong) expect(await answers.writePackage(folder, files, KINDS)).toMatchObject({ ok: false, message: expect.stringContaining('manifest') as string });
    expect(await answers.writePackage(folder, good, ['drawings'])).toMatchObject({ ok: false });
    expect(await readdir(home)).toEqual([]);
  }));

  it('never by an id that was not given', async () => {
    await expect(packages(null).answers.showPackage('folder-0a' as FolderId)).rejects.toThrow('no chosen folder');
    await expect(packages(null).answers.writePackage('folder-0a' as FolderId, handed('x'), KINDS)).rejects.toThrow('no chosen folder');
  });

  const out = ['../x', '/x', 'drawings/../../x', 'drawings\\..\\x', 'C:/x', 'drawings//x', 'drawings/', 'drawings', './drawings/x', 'other/x', 'x.txt', '.hidden', 'drawings/.x', 'drawings/con', 'drawings/aux.pdf', 'drawings/x.', 'drawings/x ', 'drawings/a\u0000b', 'drawings/a\nb', 'drawings/a:b', '', 'stations/x', 'drawings/1/2/3/4', 'manifest.json/x', 'NUL.penwright'];
  it.each(out.map((path) => [JSON.stringify(path), path]))('never at %s', async (_, path) => {
    expect(isPackagePath(path)).toBe(false);
    await inTemporaryFolder(async (home) => {
      const { answers } = packages(join(home, 'a', 'out'));
      const { folder } = value(await answers.choosePackage('x'))!;
      const reply = await answers.writePackage(folder, [...handed('first'), { path, bytes: Uint8Array.of(1) }], KINDS);
      expect(reply).toMatchObject({ ok: false, message: expect.stringContaining('is not the path of a file in a package') as string });
      expect(await readdir(home)).toEqual([]);
    });
  });

  it.each(['manifest.json', 'stations.json', 'yard.penwright.json', 'drawings/101 plan.dxf', 'drawings/all.pdf', 'plates/P-1.dxf', 'nests/12 ga-1.dxf', 'templates/R-1.pdf', 'schedules/pieces.csv', 'report/findings.json', 'drawings/inner/102.svg'])('at %s', (path) => {
    expect(isPackagePath(path)).toBe(true);
  });

  it('never one file twice, in capitals or not', () => inTemporaryFolder(async (home) => {
    const { answers } = packages(join(home, 'out'));
    const { folder } = value(await answers.choosePackage('x'))!;
    const good = handed('first');
    expect(await answers.writePackage(folder, [...good, { path: 'drawings/101 PLAN.svg', bytes: Uint8Array.of(1) }], KINDS)).toMatchObject({ ok: false });
    expect(await answers.writePackage(folder, [...good, good[0]!], KINDS)).toMatchObject({ ok: false });
  }));
});

describe('a PDF is handed over to print', () => {
  const pdf = new TextEncoder().encode('%PDF-1.7 and so on');

  it('under a name that ends in .pdf, the last one taken away', () => inTemporaryFolder(async (home) => {
    const opened: string[] = [];
    const { print } = createPrint({ disk: nodeDisk, folder: join(home, 'print'), open: (path) => { opened.push(path); return Promise.resolve(''); } });
    expect(await print(pdf, 'all.pdf')).toEqual({ ok: true, value: null });
    expect(await print(pdf, '../../run me.exe')).toEqual({ ok: true, value: null });
    expect(opened).toEqual([join(home, 'print', 'all.pdf'), join(home, 'print', 'run me.exe.pdf')]);
    expect(await readdir(join(home, 'print'))).toEqual(['run me.exe.pdf']);
    expect(new Uint8Array(await readFile(opened[1]!))).toEqual(pdf);
  }));

  it('and nothing else is', () => inTemporaryFolder(async (home) => {
    const { print } = createPrint({ disk: nodeDisk, folder: join(home, 'print'), open: () => Promise.resolve('no program') });
    expect(await print(new TextEncoder().encode('MZ not a PDF'), 'all.pdf')).toMatchObject({ ok: false, message: expect.stringContaining('is not a PDF') as string });
    expect(await print(Uint8Array.of(), 'all.pdf')).toMatchObject({ ok: false });
    expect(await readdir(home)).toEqual([]);
    expect(await print(pdf, 'all.pdf')).toMatchObject({ ok: false, message: expect.stringContaining('no program') as string });
  }));
});
