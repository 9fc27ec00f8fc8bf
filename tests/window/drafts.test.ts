import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { present } from '../../renderer/project/history.ts';
import { isUnsaved } from '../../renderer/project/session.ts';
import { fakeDesk } from './support/fake-desk.ts';
import { projectsOn } from './support/opened.ts';

const JUNIPER = readFileSync(new URL('../../shared/examples/juniper-flat.penwright.json', import.meta.url), 'utf8');

beforeEach(() => { vi.useFakeTimers(); });
afterEach(() => { vi.useRealTimers(); });

async function openJuniper() {
  const desk = fakeDesk({ 'a.json': JUNIPER });
  desk.chosen = 'a.json';
  const on = projectsOn(desk);
  await on.projects.openFile();
  return { desk, ...on };
}

describe('drafts', () => {
  it('are kept two seconds after a change, also while the hand goes on', async () => {
    const { desk, session } = await openJuniper();
    for (let moment = 0; moment < 30; moment += 1) {
      session.setField('chute.width', 28 + moment / 10, { label: 'width', gesture: 'drag' });
      await vi.advanceTimersByTimeAsync(100);
    }
    expect(JSON.parse(desk.drafted.get('a.json') ?? '{}')).toMatchObject({ chute: { width: 29.9 } });
    await vi.advanceTimersByTimeAsync(2000);
    expect(JSON.parse(desk.drafted.get('a.json') ?? '{}')).toMatchObject({ chute: { width: 30.9 } });
    const calls = desk.calls.length;
    await vi.advanceTimersByTimeAsync(20_000);
    expect(desk.calls.length).toBe(calls);
  });

  it('go when the project is saved', async () => {
    const { desk, session, projects } = await openJuniper();
    session.setField('title', 'Mine', { label: 'title' });
    await vi.advanceTimersByTimeAsync(2000);
    expect([...desk.drafted.keys()]).toEqual(['a.json']);
    await projects.save();
    await vi.advanceTimersByTimeAsync(5000);
    expect([...desk.drafted.keys()]).toEqual([]);
  });

  it('go when everything is undone, and come again with redo', async () => {
    const { desk, session, projects } = await openJuniper();
    session.setField('title', 'Mine', { label: 'title' });
    await vi.advanceTimersByTimeAsync(2000);
    projects.undo();
    await vi.advanceTimersByTimeAsync(5000);
    expect([...desk.drafted.keys()]).toEqual([]);
    projects.redo();
    await vi.advanceTimersByTimeAsync(2000);
    expect(JSON.parse(desk.drafted.get('a.json') ?? '{}')).toMatchObject({ title: 'Mine' });
  });

  it('of a project without a file go when it gets one', async () => {
    const desk = fakeDesk();
    const { session, projects } = projectsOn(desk);
    await projects.openNew(JUNIPER, 'juniper.json');
    session.setField('title', 'Mine', { label: 'title' });
    await vi.advanceTimersByTimeAsync(2000);
    expect([...desk.drafted.keys()]).toEqual(['-']);
    desk.chosen = 'mine.json';
    await projects.saveAs();
    await vi.advanceTimersByTimeAsync(5000);
    expect([...desk.drafted.keys()]).toEqual([]);
  });

  it('are taken up as unsaved work, and undo leads back to the file', async () => {
    const text = JUNIPER.replace('"Juniper Flat"', '"Juniper Flat, later"');
    const desk = fakeDesk({ 'a.json': JUNIPER }, [{ id: 'draft-1', name: 'a.json', text, kept: '' }, { id: 'draft-2', name: '', text, kept: '' }]);
    const { projects, open } = projectsOn(desk);
    await projects.takeDraft('draft-1', 'a.json');
    expect(present(open().history)).toMatchObject({ title: 'Juniper Flat, later' });
    expect(isUnsaved(open())).toBe(true);
    expect(open().file).toBe('a.json');
    await vi.advanceTimersByTimeAsync(2000);
    expect(desk.drafted.get('a.json')).toBe(text);
    projects.undo();
    expect(isUnsaved(open())).toBe(false);
    await projects.takeDraft('draft-2', 'untitled.json');
    expect(open()).toMatchObject({ file: null, name: 'untitled.json', saved: null });
    expect(isUnsaved(open())).toBe(true);
  });
});
