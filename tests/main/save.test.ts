import { chmod, lstat, mkdir, readdir, readFile, rm, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type FileId } from '../../electron/bridge/desk.ts';
import { fileName } from '../../electron/main/projects/index.ts';
import { inTemporaryFolder } from '../disk/support/packages.ts';
import { deskIn, openFile, value } from './support/desk.ts';

const inHome = (test: (home: string, path: string) => Promise<void>) => () => inTemporaryFolder((home) => test(home, join(home, 'yard.penwright.json')));

describe('a project is opened', () => {
  it('with its name and text, and nothing where nothing is chosen', inHome(async (home, path) => {
    await writeFile(path, '{"title":"Yard"}');
    const desk = await deskIn(home);
    expect(await desk.projects.answers.openProject()).toEqual({ ok: true, value: null });
    const opened = await openFile(desk, path);
    expect([opened.name, opened.text]).toEqual(['yard.penwright.json', '{"title":"Yard"}']);
    expect((await openFile(desk, path)).file).toBe(opened.file);
  }));

  it('or refused with its path and what is allowed', inHome(async (home, path) => {
    const desk = await deskIn(home);
    desk.person.opens = path;
    expect(await desk.projects.answers.openProject()).toEqual({ ok: false, message: `${path}: is not there; allowed is the path of a project file` });
    await writeFile(path, Uint8Array.of(0x7b, 0xff));
    expect(await desk.projects.answers.openProject()).toMatchObject({ ok: false, message: expect.stringContaining('is not UTF-8 from line 1') as string });
  }));

  it('from outside by its name alone, of either ending', inHome(async (home) => {
    const { projects } = await deskIn(home);
    for (const name of ['a.penwright', 'b.penwright.json', 'C.PENWRIGHT']) {
      await writeFile(join(home, name), '{}');
      expect(await projects.openPath(join(home, name))).toMatchObject({ ok: true, value: { name } });
    }
    await writeFile(join(home, 'notes.txt'), '{}');
    expect(await projects.openPath(join(home, 'notes.txt'))).toMatchObject({ ok: false, message: expect.stringContaining('ends in .penwright.json or .penwright') as string });
  }));
});

describe('a project is saved', () => {
  it('over what was read, again and again, and leaves nothing beside it', inHome(async (home, path) => {
    await writeFile(path, 'one');
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    for (const text of ['two', 'three', 'three']) {
      expect(await desk.projects.answers.saveProject(file, text, false)).toEqual({ ok: true, value: { kind: 'saved' } });
      expect(await readFile(path, 'utf8')).toBe(text);
    }
    expect(await readdir(home)).toEqual(['own', 'yard.penwright.json']);
  }));

  it('with its byte order mark, its permissions and the link that leads to it', inHome(async (home, path) => {
    await mkdir(join(home, 'far'));
    await writeFile(join(home, 'far', 'real.penwright'), '\ufeffone');
    await chmod(join(home, 'far', 'real.penwright'), 0o666);
    await symlink(join(home, 'far', 'real.penwright'), path);
    const desk = await deskIn(home);
    const opened = await openFile(desk, path);
    expect(opened.text).toBe('one');
    value(await desk.projects.answers.saveProject(opened.file, 'two', false));
    expect(await readFile(path, 'utf8')).toBe('\ufefftwo');
    expect((await lstat(path)).isSymbolicLink()).toBe(true);
    expect((await stat(path)).mode & 0o777).toBe(0o666);
  }));

  it('not over what somebody else wrote; after that only over what was told of', inHome(async (home, path) => {
    await writeFile(path, 'one');
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    await writeFile(path, 'theirs');
    const save = async (force: boolean) => value(await desk.projects.answers.saveProject(file, 'ours', force));
    // Nobody has been told yet, so there is nothing to agree to.
    expect(await save(true)).toEqual({ kind: 'changed', text: 'theirs' });
    expect(await save(false)).toEqual({ kind: 'changed', text: 'theirs' });
    await writeFile(path, 'theirs again');
    expect(await save(true)).toEqual({ kind: 'changed', text: 'theirs again' });
    expect(await readFile(path, 'utf8')).toBe('theirs again');
    expect(await save(true)).toEqual({ kind: 'saved' });
    expect(await readFile(path, 'utf8')).toBe('ours');
    await writeFile(path, 'theirs once more');
    expect(await save(true)).toEqual({ kind: 'changed', text: 'theirs once more' });
  }));

  it('anew where it is gone, and not where its folder is gone', inHome(async (home) => {
    await mkdir(join(home, 'inner'));
    const path = join(home, 'inner', 'yard.penwright');
    await writeFile(path, 'one');
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    await rm(path);
    expect(value(await desk.projects.answers.saveProject(file, 'two', false))).toEqual({ kind: 'saved' });
    expect(await readFile(path, 'utf8')).toBe('two');
    await rm(join(home, 'inner'), { recursive: true });
    expect(await desk.projects.answers.saveProject(file, 'three', false)).toMatchObject({ ok: false, message: expect.stringMatching(/cannot be written .*; allowed is/) as string });
  }));

  it('not over a file that is marked as read-only, nor over a folder', inHome(async (home, path) => {
    await writeFile(path, 'one');
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    await chmod(path, 0o444);
    expect(await desk.projects.answers.saveProject(file, 'two', false)).toMatchObject({ ok: false, message: expect.stringContaining('read-only') as string });
    expect(await readFile(path, 'utf8')).toBe('one');
    await rm(path, { force: true });
    await mkdir(path);
    expect(await desk.projects.answers.saveProject(file, 'two', false)).toMatchObject({ ok: false });
    expect((await stat(path)).isDirectory()).toBe(true);
  }));

  it('one save after the other, however fast they are asked for', inHome(async (home, path) => {
    await writeFile(path, 'one');
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    const texts = Array.from({ length: 20 }, (_, index) => `text ${String(index)}`);
    const replies = await Promise.all(texts.map((text) => desk.projects.answers.saveProject(file, text, false)));
    expect(replies.every((reply) => reply.ok && reply.value.kind === 'saved')).toBe(true);
    expect(await readFile(path, 'utf8')).toBe('text 19');
  }));

  it('never by an id that was not given', inHome(async (home) => {
    const { projects } = await deskIn(home);
    await expect(projects.answers.saveProject('file-00' as FileId, 'x', false)).rejects.toThrow('no open file');
  }));
});

describe('a project is saved as', () => {
  it('a new file, with the ending that was left out, and is that file from then on', inHome(async (home) => {
    const desk = await deskIn(home);
    expect(await desk.projects.answers.saveProjectAs('Juniper: Flat/2', 'one')).toEqual({ ok: true, value: null });
    expect(desk.person.suggested).toBe('Juniper Flat 2.penwright.json');
    for (const [chosen, name] of [['a', 'a.penwright.json'], ['b.json', 'b.penwright.json'], ['c.penwright', 'c.penwright'], ['d.penwright.json', 'd.penwright.json'], ['e.txt', 'e.txt.penwright.json']] as const) {
      desk.person.saves = join(home, chosen);
      const saved = value(await desk.projects.answers.saveProjectAs('x', 'one'));
      expect(saved?.name).toBe(name);
      expect(await readFile(join(home, name), 'utf8')).toBe('one');
      expect(value(await desk.projects.answers.saveProject(saved!.file, 'two', false))).toEqual({ kind: 'saved' });
    }
  }));

  it('in another\'s place where the person was asked, never where only the ending leads there', inHome(async (home, path) => {
    await writeFile(path, 'theirs');
    const desk = await deskIn(home);
    desk.person.saves = join(home, 'yard');
    expect(await desk.projects.answers.saveProjectAs('x', 'ours')).toMatchObject({ ok: false, message: expect.stringContaining('is there already') as string });
    expect(await readFile(path, 'utf8')).toBe('theirs');
    desk.person.saves = path;
    expect(value(await desk.projects.answers.saveProjectAs('x', 'ours'))?.name).toBe('yard.penwright.json');
    expect(await readFile(path, 'utf8')).toBe('ours');
  }));

  it.each([['', 'project'], ['..', 'project'], ['../../etc/passwd', 'etc passwd'], ['C:\\x', 'C x'], ['nul', 'project nul'], ['a\u0000b\n', 'a b'], ['.hidden', 'hidden'], ['end. .', 'end']])('suggests a name for text %#', (text, name) => {
    expect(fileName(text)).toBe(name);
  });
});

describe('the recent projects', () => {
  it('stand newest first, without what is gone, across windows', inHome(async (home) => {
    const first = await deskIn(home);
    const paths = ['a.penwright', 'b.penwright', 'c.penwright'].map((name) => join(home, name));
    for (const path of paths) {
      await writeFile(path, path);
      await openFile(first, path);
    }
    await openFile(first, paths[0]!);
    const { projects } = await deskIn(home);
    const names = async (): Promise<string[]> => (await projects.answers.recentProjects()).map((recent) => recent.name);
    expect(await names()).toEqual(['a.penwright', 'c.penwright', 'b.penwright']);
    expect((await projects.answers.recentProjects())[0]?.folder).toBe(home);
    await rm(paths[2]!);
    const [a, b] = await projects.answers.recentProjects();
    expect(await names()).toEqual(['a.penwright', 'b.penwright']);
    expect(value(await projects.answers.openRecent(b!.id)).text).toBe(paths[1]);
    expect(await projects.answers.openRecent('recent-00')).toMatchObject({ ok: false });
    // What is gone stays forgotten, also when another takes its name.
    await writeFile(paths[2]!, 'new');
    expect((await names()).length).toBe(2);
    expect(a!.id).not.toBe(b!.id);
  }));

  it('wait for a disk that is away', inHome(async (home) => {
    const desk = await deskIn(home);
    await mkdir(join(home, 'disk'));
    await writeFile(join(home, 'disk', 'a.penwright'), 'a');
    await openFile(desk, join(home, 'disk', 'a.penwright'));
    await rm(join(home, 'disk'), { recursive: true });
    expect(await desk.projects.answers.recentProjects()).toEqual([]);
    await mkdir(join(home, 'disk'));
    await writeFile(join(home, 'disk', 'a.penwright'), 'a');
    expect((await desk.projects.answers.recentProjects()).map((recent) => recent.name)).toEqual(['a.penwright']);
  }));

  it('are no more than twelve, and a list that is broken is an empty one', inHome(async (home) => {
    const desk = await deskIn(home);
    for (let index = 0; index < 14; index += 1) {
      const path = join(home, `${String(index)}.penwright`);
      await writeFile(path, '');
      await openFile(desk, path);
    }
    expect((await desk.projects.answers.recentProjects()).map((recent) => recent.name)).toEqual([13, 12, 11, 10, 9, 8, 7, 6, 5, 4, 3, 2].map((index) => `${String(index)}.penwright`));
    await writeFile(join(desk.own, 'recent.json'), '{"paths":');
    expect(await desk.projects.answers.recentProjects()).toEqual([]);
  }));
});
