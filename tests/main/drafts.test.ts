import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { type Disk, nodeDisk } from '../../electron/disk/index.ts';
import { inTemporaryFolder } from '../disk/support/packages.ts';
import { deskIn, openFile, value } from './support/desk.ts';

const inHome = (test: (home: string, path: string) => Promise<void>) => () => inTemporaryFolder(async (home) => {
  const path = join(home, 'yard.penwright.json');
  await writeFile(path, 'saved');
  await test(home, path);
});

const BESIDE = '.yard.penwright.json.penwright-draft';

describe('a draft', () => {
  it('stands beside its file and is offered by the next window, not by this one', inHome(async (home, path) => {
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    value(await desk.projects.answers.keepDraft(file, 'half'));
    value(await desk.projects.answers.keepDraft(file, 'more'));
    expect(await readdir(home)).toEqual([BESIDE, 'own', 'yard.penwright.json']);
    expect(await desk.projects.answers.drafts()).toEqual([]);

    const next = await deskIn(home);
    const drafts = await next.projects.answers.drafts();
    expect(drafts).toMatchObject([{ name: 'yard.penwright.json', text: 'more', kept: '08:02' }]);
    const taken = value(await next.projects.answers.takeDraft(drafts[0]!.id));
    expect(taken).toMatchObject({ text: 'more', project: { name: 'yard.penwright.json', text: 'saved' } });
    // Taken up it is this window's own, and stands until it is saved: a second fall loses nothing.
    expect(await next.projects.answers.drafts()).toEqual([]);
    expect(await (await deskIn(home)).projects.answers.drafts()).toHaveLength(1);
    expect(value(await next.projects.answers.saveProject(taken.project!.file, 'more', false))).toEqual({ kind: 'saved' });
    expect(await readdir(home)).toEqual(['own', 'yard.penwright.json']);
    expect(await (await deskIn(home)).projects.answers.drafts()).toEqual([]);
    expect(await readdir(join(home, 'own', 'drafts'))).toEqual([]);
  }));

  it('of a project without a file stands in the program\'s own folder', inHome(async (home) => {
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft(null, 'new yard'));
    expect(await readdir(home)).toEqual(['own', 'yard.penwright.json']);
    const next = await deskIn(home);
    const [draft] = await next.projects.answers.drafts();
    expect(draft).toMatchObject({ name: '', text: 'new yard' });
    expect(value(await next.projects.answers.takeDraft(draft!.id))).toEqual({ project: null, text: 'new yard' });
    value(await next.projects.answers.keepDraft(null, 'new yard, further'));
    expect((await (await deskIn(home)).projects.answers.drafts()).map(({ text }) => text)).toEqual(['new yard, further']);
    value(await next.projects.answers.dropDraft(null));
    expect(await readdir(join(home, 'own', 'drafts'))).toEqual([]);
  }));

  it('is thrown away when asked, and once', inHome(async (home, path) => {
    const desk = await deskIn(home);
    const { file } = await openFile(desk, path);
    value(await desk.projects.answers.keepDraft(file, 'half'));
    const next = await deskIn(home);
    const [draft] = await next.projects.answers.drafts();
    value(await next.projects.answers.throwDraft(draft!.id));
    expect(await readdir(home)).toEqual(['own', 'yard.penwright.json']);
    expect(await next.projects.answers.throwDraft(draft!.id)).toMatchObject({ ok: false, message: expect.stringContaining('no longer') as string });
    expect(await next.projects.answers.takeDraft(draft!.id)).toMatchObject({ ok: false });
  }));

  it('goes into the program\'s own folder where the file\'s can\'t be written', inHome(async (home, path) => {
    const locked: Disk = {
      ...nodeDisk,
      writeNew: (at, bytes, mode) => (dirname(at) === home ? Promise.reject(Object.assign(new Error('EROFS'), { code: 'EROFS' })) : nodeDisk.writeNew(at, bytes, mode)),
    };
    const desk = await deskIn(home, locked);
    const { file } = await openFile(desk, path);
    value(await desk.projects.answers.keepDraft(file, 'half'));
    value(await desk.projects.answers.keepDraft(file, 'more'));
    expect(await readdir(home)).toEqual(['own', 'yard.penwright.json']);
    const next = await deskIn(home);
    const [draft] = await next.projects.answers.drafts();
    expect(value(await next.projects.answers.takeDraft(draft!.id))).toMatchObject({ text: 'more', project: { text: 'saved' } });
    value(await next.projects.answers.dropDraft(value(await next.projects.openPath(path)).file));
    expect(await readdir(join(home, 'own', 'drafts'))).toEqual([]);
  }));

  it('says so where it can be kept nowhere', inHome(async (home, path) => {
    const full: Disk = { ...nodeDisk, writeNew: () => Promise.reject(Object.assign(new Error('ENOSPC'), { code: 'ENOSPC' })) };
    const desk = await deskIn(home, full);
    const { file } = await openFile(desk, path);
    expect(await desk.projects.answers.keepDraft(file, 'half')).toMatchObject({ ok: false, message: expect.stringContaining('the disk is full') as string });
  }));

  it('of an earlier window is never written over by work on the same file', inHome(async (home, path) => {
    const first = await deskIn(home);
    value(await first.projects.answers.keepDraft((await openFile(first, path)).file, 'first'));
    const second = await deskIn(home);
    value(await second.projects.answers.keepDraft((await openFile(second, path)).file, 'second'));
    expect((await second.projects.answers.drafts()).map(({ text }) => text)).toEqual(['first']);
    const third = await deskIn(home);
    expect((await third.projects.answers.drafts()).map(({ text }) => text).sort()).toEqual(['first', 'second']);
  }));

  it('found beside a file that came from elsewhere is offered', inHome(async (home, path) => {
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft((await openFile(desk, path)).file, 'half'));
    await rm(join(home, 'own'), { recursive: true });
    const next = await deskIn(home);
    expect(await next.projects.answers.drafts()).toEqual([]);
    await openFile(next, path);
    expect((await next.projects.answers.drafts()).map(({ text }) => text)).toEqual(['half']);
  }));

  it('that somebody else\'s change has overtaken tells of it at the first save', inHome(async (home, path) => {
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft((await openFile(desk, path)).file, 'half'));
    await writeFile(path, 'theirs');
    const next = await deskIn(home);
    const [draft] = await next.projects.answers.drafts();
    const taken = value(await next.projects.answers.takeDraft(draft!.id));
    expect(taken.project?.text).toBe('theirs');
    expect(value(await next.projects.answers.saveProject(taken.project!.file, 'half', false))).toEqual({ kind: 'changed', text: 'theirs' });
    expect(await readFile(path, 'utf8')).toBe('theirs');
  }));

  it('whose file is gone is a project without a file', inHome(async (home, path) => {
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft((await openFile(desk, path)).file, 'half'));
    await rm(path);
    const next = await deskIn(home);
    const [draft] = await next.projects.answers.drafts();
    expect(value(await next.projects.answers.takeDraft(draft!.id))).toEqual({ project: null, text: 'half' });
  }));

  it('that holds what its file holds is not offered', inHome(async (home, path) => {
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft((await openFile(desk, path)).file, 'saved'));
    expect(await (await deskIn(home)).projects.answers.drafts()).toEqual([]);
    expect(await readdir(home)).toEqual(['own', 'yard.penwright.json']);
  }));

  it('on a disk that is away is waited for, and one that can\'t be read is left alone', inHome(async (home) => {
    await mkdir(join(home, 'disk'));
    const path = join(home, 'disk', 'a.penwright');
    await writeFile(path, 'a');
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft((await openFile(desk, path)).file, 'half'));
    const beside = join(home, 'disk', '.a.penwright.penwright-draft');
    const bytes = await readFile(beside);
    await rm(join(home, 'disk'), { recursive: true });
    const next = await deskIn(home);
    expect(await next.projects.answers.drafts()).toEqual([]);
    await mkdir(join(home, 'disk'));
    await writeFile(beside, '{"format":"penwright-draft","version":2}');
    expect(await next.projects.answers.drafts()).toEqual([]);
    await writeFile(beside, bytes);
    expect((await next.projects.answers.drafts()).map(({ text }) => text)).toEqual(['half']);
    // Taken away by hand it is forgotten.
    await rm(beside);
    expect(await next.projects.answers.drafts()).toEqual([]);
    expect(await readdir(join(home, 'own', 'drafts'))).toEqual([]);
  }));

  it('of a page that fell and came again is offered to it', inHome(async (home, path) => {
    const desk = await deskIn(home);
    value(await desk.projects.answers.keepDraft((await openFile(desk, path)).file, 'half'));
    desk.projects.begin();
    expect((await desk.projects.answers.drafts()).map(({ text }) => text)).toEqual(['half']);
  }));
});
