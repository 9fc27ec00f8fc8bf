import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { EMPTY_BRIEF } from '../../renderer/project/empty-brief.ts';
import { present } from '../../renderer/project/history.ts';
import { isUnsaved } from '../../renderer/project/session.ts';
import { readBrief } from '../../core/brief/index.ts';
import { fakeDesk } from './support/fake-desk.ts';
import { answerNext, projectsOn } from './support/opened.ts';

const JUNIPER = readFileSync(new URL('../../shared/examples/juniper-flat.penwright.json', import.meta.url), 'utf8');
const TIGHT = readFileSync(new URL('../../shared/examples/tight-curve.penwright.json', import.meta.url), 'utf8');

function changed() {
  const desk = fakeDesk({ 'a.json': JUNIPER, 'b.json': TIGHT });
  desk.chosen = 'a.json';
  const on = projectsOn(desk);
  return { desk, ...on, begun: on.projects.openFile().then(() => { on.session.setField('title', 'Mine', { label: 'title' }); }) };
}

describe('leaving work that is not saved', () => {
  it('stays where a person wants to', async () => {
    const { projects, open, begun } = changed();
    await begun;
    const opening = projects.openRecent('b.json');
    await answerNext(projects, 'unsaved', 'stay');
    await opening;
    expect(present(open().history)).toMatchObject({ title: 'Mine' });
  });

  it('saves first where asked, and not at all where not', async () => {
    for (const [choice, title] of [['save', 'Mine'], ['leave', 'Juniper Flat']] as const) {
      const { desk, projects, open, begun } = changed();
      await begun;
      const opening = projects.openRecent('b.json');
      await answerNext(projects, 'unsaved', choice);
      await opening;
      expect(JSON.parse(desk.files.get('a.json') ?? '')).toMatchObject({ title });
      expect(present(open().history)).toMatchObject({ title: 'Cedar Bend working pens' });
    }
  });

  it('stays where the saving was not done', async () => {
    const desk = fakeDesk({ 'b.json': TIGHT });
    const { projects, open, session } = projectsOn(desk);
    await projects.openNew(EMPTY_BRIEF, 'untitled.json');
    session.setField('title', 'Mine', { label: 'title' });
    const opening = projects.openRecent('b.json');
    await answerNext(projects, 'unsaved', 'save');
    await opening;
    expect(present(open().history)).toMatchObject({ title: 'Mine' });
  });

  it('asks before the window closes, and answers the machine', async () => {
    for (const [choice, closes] of [['stay', false], ['leave', true], ['save', true]] as const) {
      const { desk, projects, begun } = changed();
      await begun;
      desk.ask({ kind: 'close' });
      await answerNext(projects, 'unsaved', choice);
      await new Promise((done) => setTimeout(done, 50));
      expect(desk.calls.at(-1)).toBe(`close ${String(closes)}`);
    }
  });

  it('asks nothing of an example that nobody has touched', async () => {
    const desk = fakeDesk();
    const { projects, open } = projectsOn(desk);
    await projects.openNew(JUNIPER, 'juniper.json');
    expect(isUnsaved(open())).toBe(false);
    expect(open().file).toBeNull();
    await projects.openNew(TIGHT, 'tight.json');
    expect(open().name).toBe('tight.json');
  });
});

describe('what is opened', () => {
  it('is refused with its faults where it is no JSON, is written twice over, or is not ours', async () => {
    const cases: readonly (readonly [string, RegExp])[] = [
      ['{ "format": "penwright-project", ', /line 1, column/],
      ['{ "format": "penwright-project", "version": 1, "title": "a", "title": "b" }', /^title: /],
      ['{ "format": "something", "version": 1 }', /^format: /],
      ['{ "format": "penwright-project", "version": 99 }', /^version: /],
      ['[]', /allowed|must be/],
    ];
    for (const [text, words] of cases) {
      const desk = fakeDesk({ 'x.json': text });
      desk.chosen = 'x.json';
      const { projects, session } = projectsOn(desk);
      const opening = projects.openFile();
      await new Promise((done) => setTimeout(done, 20));
      const asking = projects.asking.get();
      expect(asking).toMatchObject({ kind: 'unreadable', name: 'x.json' });
      expect(asking?.kind === 'unreadable' ? asking.faults.join('\n') : '').toMatch(words);
      await answerNext(projects, 'unreadable', null);
      await opening;
      expect(session.get()).toBeNull();
    }
  });

  it('opens though its fields are at fault', async () => {
    const desk = fakeDesk({ 'x.json': JUNIPER.replace('"12 ft"', '"12 yards"') });
    desk.chosen = 'x.json';
    const { projects, open } = projectsOn(desk);
    await projects.openFile();
    expect(present(open().history)).toMatchObject({ crowdPen: { radius: '12 yards' } });
  });

  it('from nothing asks for what has no default and for nothing else', () => {
    const read = readBrief(EMPTY_BRIEF);
    expect(read.ok ? [] : read.faults.map((fault) => fault.path)).toEqual([
      'title', 'crowdPen.radius', 'chute.width', 'chute.runs', 'fences.crowdPen.rail', 'fences.crowdPen.post',
    ]);
  });
});
