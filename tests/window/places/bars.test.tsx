import '../support/page.ts';
import { afterEach, describe, expect, it } from 'vitest';
import { tapeCutList } from '../../../core/shop/cut-list/index.ts';
import { MakePlace } from '../../../renderer/places/make/MakePlace.tsx';
import { type CutPlanner } from '../../../renderer/worker/cut-planner.ts';
import { type CutAsk, type CutTold } from '../../../renderer/worker/protocol.ts';
import { showPlace, type ShownPlace } from '../support/shown.tsx';

interface Planning {
  readonly ask: CutAsk;
  readonly tell: (told: CutTold) => void;
  ended: boolean;
}

let page: ShownPlace;
let plans: Planning[] = [];
afterEach(() => { page.end(); });

/** A planner that plans when the test says so. */
const planner = (): CutPlanner => {
  let own: Planning | null = null;
  return {
    start: (ask, tell) => {
      own = { ask, tell, ended: false };
      plans.push(own);
    },
    end: () => { if (own !== null) own.ended = true; },
  };
};

async function open(): Promise<Planning> {
  plans = [];
  page = await showPlace(MakePlace, 'juniper-flat', planner);
  await page.until('a planning', () => plans.length === 1);
  page.press(page.find('.flat-file-bars'));
  return plans[0]!;
}

const numbers = (): string[] => page.all('.flat-file ol:first-of-type b').map((number) => number.textContent);
async function end({ ask, tell }: Planning): Promise<void> {
  page.change(() => { tell({ kind: 'ended', list: tapeCutList(ask.jobs) }); });
  await page.until('the cut list in the set', () => numbers().includes('1401'));
}

describe('the bars to cut', () => {
  it('are told while they are planned, drawn when they are, and come into the set and the schedules', async () => {
    const planning = await open();
    expect(numbers()).not.toContain('1401');
    const [first] = tapeCutList(planning.ask.jobs);
    page.change(() => { planning.tell({ kind: 'progress', progress: { cuts: { ...first!, atLeast: 79 }, done: 0, total: planning.ask.jobs.length } }); });
    expect(page.find('.cut-progress').textContent).toContain(`${first!.section}, ${String(first!.bars.length)} bars so far; no plan can use fewer than 79`);
    expect(page.all('.section-bars')).toHaveLength(1);
    await end(planning);
    expect(planning.ended).toBe(true);
    expect(page.all('.cut-progress')).toHaveLength(0);
    expect(page.all('.section-bars > h2').map((title) => title.textContent.split(':')[0])).toEqual(planning.ask.jobs.map((job) => job.section));
    // Each row stands for so many bars alike.
    const shown = page.all('.section-bars').map((section) => [...section.querySelectorAll('b')].reduce((sum, count) => sum + parseInt(count.textContent, 10), 0));
    expect(shown).toEqual(tapeCutList(planning.ask.jobs).map((section) => section.bars.length));
    expect(page.all('.flat-file ol:last-child button span').map((title) => title.textContent)).toContain('Cut list');
  });

  it('choose the piece whose mark is pressed', async () => {
    await end(await open());
    const button = page.find('.bar-picture button', /^R\d+$/);
    page.press(button);
    expect(page.deskWindow.selection.get().mark).toBe(button.textContent);
    expect(page.all('.bar-picture button[aria-pressed="true"]').every((one) => one.textContent === button.textContent)).toBe(true);
  });

  it('are planned again where what is cut has changed, and not for another title', async () => {
    await end(await open());
    page.change(() => { page.deskWindow.session.setField('title', 'Another', { label: 'x' }); });
    await page.until('the change', () => page.deskWindow.worked.get().answer !== null && JSON.stringify(page.deskWindow.worked.get().laidProject).includes('Another'));
    await page.until('the set of the change', () => page.all('.freshness p').length === 0);
    expect([plans.length, numbers().includes('1401')]).toEqual([1, true]);
    page.change(() => { page.deskWindow.session.setField('shop.grip', '9 in', { label: 'x' }); });
    await page.until('another planning', () => plans.length === 2);
    await page.until('a set without the old list', () => !numbers().includes('1401'));
    await end(plans[1]!);
  });

  it('are left unplanned when a person stops it, and planned when asked again', async () => {
    const planning = await open();
    page.press(page.find('.cut-progress button', 'Stop planning'));
    expect(planning.ended).toBe(true);
    expect(page.find('.cut-progress').textContent).toContain('the set has no cut list');
    page.change(() => { planning.tell({ kind: 'ended', list: tapeCutList(planning.ask.jobs) }); });
    expect(numbers()).not.toContain('1401');
    page.press(page.find('.cut-progress button', 'Plan the cuts'));
    await page.until('another planning', () => plans.length === 2);
    await end(plans[1]!);
  });

  it('say so where the solver can\'t run, and show no lesser list', async () => {
    const planning = await open();
    page.change(() => { planning.tell({ kind: 'broken', message: 'no WebAssembly here' }); });
    expect(page.find('.cut-progress').textContent).toContain('could not run, so the set has no cut list, and no lesser one is shown in its place: no WebAssembly here');
    expect(page.all('.section-bars')).toHaveLength(0);
    expect(numbers()).not.toContain('1401');
  });
});
