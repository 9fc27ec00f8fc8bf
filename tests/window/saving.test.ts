import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { present } from '../../renderer/project/history.ts';
import { isUnsaved } from '../../renderer/project/session.ts';
import { textOf } from '../../renderer/project/project-text.ts';
import { fakeDesk } from './support/fake-desk.ts';
import { answerNext, projectsOn } from './support/opened.ts';

const example = (name: string): string => readFileSync(new URL(`../../shared/examples/${name}.penwright.json`, import.meta.url), 'utf8');
const JUNIPER = example('juniper-flat');
const marksIn = (text: string | undefined): Readonly<Record<string, string>> => (JSON.parse(text ?? '{}') as { marks?: Record<string, string> }).marks ?? {};

async function openJuniper() {
  const desk = fakeDesk({ 'a.penwright.json': JUNIPER });
  desk.chosen = 'a.penwright.json';
  const on = projectsOn(desk);
  await on.projects.openFile();
  return { desk, ...on };
}

describe('saving a project', () => {
  it('writes the very bytes again where nothing was changed', async () => {
    const odd = JUNIPER.replaceAll('\n', '\r\n').replace('"radius": "12 ft"', '"radius":   "12 ft"');
    const desk = fakeDesk({ 'odd.json': odd });
    desk.chosen = 'odd.json';
    const { projects, open } = projectsOn(desk);
    await projects.openFile();
    expect(isUnsaved(open())).toBe(false);
    await projects.save();
    expect(desk.files.get('odd.json')).toBe(odd);
    desk.chosen = 'copy.json';
    await projects.saveAs();
    expect(desk.files.get('copy.json')).toBe(odd);
    expect(open().file).toBe('copy.json');
  });

  it('writes the marks of the pieces, and undo takes back the change and not the marks', async () => {
    const { desk, session, projects, open } = await openJuniper();
    expect(marksIn(JUNIPER)).toEqual({});
    session.setField('crowdPen.radius', '13 ft', { label: 'radius' });
    expect(isUnsaved(open())).toBe(true);
    await projects.save();
    const marks = marksIn(desk.files.get('a.penwright.json'));
    expect(Object.keys(marks).length).toBeGreaterThan(10);
    expect(isUnsaved(open())).toBe(false);
    projects.undo();
    expect(isUnsaved(open())).toBe(true);
    const undone = textOf(present(open().history));
    expect(marksIn(undone)).toEqual(marks);
    // But for the marks, what was undone to is the file as it was opened, spaces and all.
    expect(undone.replace(/"marks": \{[^}]*\}/, '"marks": {}')).toBe(JUNIPER.replace(/"marks": \{[^}]*\}/, '"marks": {}'));
    projects.redo();
    expect(isUnsaved(open())).toBe(false);
    projects.undo();
    await projects.save();
    // The pieces of the first radius got marks of their own; none of those issued was given to another piece.
    const later = marksIn(desk.files.get('a.penwright.json'));
    for (const [signature, mark] of Object.entries(marks)) expect(later[signature]).toBe(mark);
    expect(new Set(Object.values(later)).size).toBe(Object.keys(later).length);
  });

  it('saves a project with faults as it stands', async () => {
    const { desk, session, projects, open } = await openJuniper();
    session.setField('chute.width', 'narrow', { label: 'width' });
    await projects.save();
    expect(JSON.parse(desk.files.get('a.penwright.json') ?? '')).toMatchObject({ chute: { width: 'narrow' } });
    expect(isUnsaved(open())).toBe(false);
  });

  it('says why where the machine refuses, and the work stays unsaved', async () => {
    const { desk, session, projects, open } = await openJuniper();
    session.setField('title', 'Other', { label: 'title' });
    desk.refusal = 'a.penwright.json: the disk is full';
    const saving = projects.save();
    expect(await asked(projects)).toMatchObject({ kind: 'refused', message: 'a.penwright.json: the disk is full' });
    await answerNext(projects, 'refused', null);
    await saving;
    expect(isUnsaved(open())).toBe(true);
    expect(desk.files.get('a.penwright.json')).toBe(JUNIPER);
  });
});

describe('a file that somebody else has changed', () => {
  const theirs = JUNIPER.replace('"Juniper Flat"', '"Juniper Flat, barn side"');
  async function clash() {
    const all = await openJuniper();
    all.session.setField('chute.width', 30, { label: 'width' });
    all.desk.files.set('a.penwright.json', theirs);
    const saving = all.projects.save();
    expect(await asked(all.projects)).toMatchObject({
      kind: 'changed',
      differences: [{ path: 'title', theirs: 'Juniper Flat, barn side', ours: 'Juniper Flat' }, { path: 'chute.width', theirs: 28, ours: 30 }],
    });
    return { ...all, saving };
  }

  it('is left as it is where a person stays', async () => {
    const { desk, projects, saving, open } = await clash();
    await answerNext(projects, 'changed', 'stay');
    await saving;
    expect(desk.files.get('a.penwright.json')).toBe(theirs);
    expect(isUnsaved(open())).toBe(true);
  });

  it('is saved over when asked, theirs being one undo away', async () => {
    const { desk, projects, saving, open } = await clash();
    await answerNext(projects, 'changed', 'over');
    await saving;
    expect(JSON.parse(desk.files.get('a.penwright.json') ?? '')).toMatchObject({ title: 'Juniper Flat', chute: { width: 30 } });
    expect(isUnsaved(open())).toBe(false);
    projects.undo();
    expect(present(open().history)).toMatchObject({ title: 'Juniper Flat, barn side', chute: { width: 28 } });
  });

  it('is opened when asked, ours being one undo away, and is no news at the next saving', async () => {
    const { desk, projects, saving, open, session } = await clash();
    await answerNext(projects, 'changed', 'theirs');
    await saving;
    expect(present(open().history)).toMatchObject({ title: 'Juniper Flat, barn side' });
    expect(isUnsaved(open())).toBe(false);
    session.setField('client', 'A', { label: 'client' });
    await projects.save();
    expect(JSON.parse(desk.files.get('a.penwright.json') ?? '')).toMatchObject({ title: 'Juniper Flat, barn side', client: 'A' });
    projects.undo();
    projects.undo();
    expect(present(open().history)).toMatchObject({ title: 'Juniper Flat', chute: { width: 30 } });
  });

  it('is left where the person saves under another name', async () => {
    const { desk, projects, saving, open } = await clash();
    desk.chosen = 'b.penwright.json';
    await answerNext(projects, 'changed', 'elsewhere');
    await saving;
    expect(desk.files.get('a.penwright.json')).toBe(theirs);
    expect(JSON.parse(desk.files.get('b.penwright.json') ?? '')).toMatchObject({ chute: { width: 30 } });
    expect(open()).toMatchObject({ file: 'b.penwright.json', name: 'b.penwright.json' });
  });

  it('and is asked about again where it was changed once more', async () => {
    const { desk, projects, saving, session } = await clash();
    await answerNext(projects, 'changed', 'theirs');
    await saving;
    session.setField('client', 'A', { label: 'client' });
    desk.files.set('a.penwright.json', 'no project at all');
    const again = projects.save();
    expect(await asked(projects)).toMatchObject({ kind: 'changed', differences: null });
    await answerNext(projects, 'changed', 'stay');
    await again;
    expect(desk.files.get('a.penwright.json')).toBe('no project at all');
  });
});

async function asked(projects: Awaited<ReturnType<typeof openJuniper>>['projects']) {
  for (let turn = 0; turn < 200 && projects.asking.get() === null; turn += 1) await new Promise((done) => setTimeout(done, 1));
  return projects.asking.get();
}
