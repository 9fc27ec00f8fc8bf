import '../support/page.ts';
import { afterEach, describe, expect, it } from 'vitest';
import { inOrder, namedRuns } from '../../../core/checks/index.ts';
import { CAUTIONS } from '../../../core/drawings/cautions.ts';
import { say } from '../../../core/text/index.ts';
import { CheckPlace } from '../../../renderer/places/check/CheckPlace.tsx';
import { showPlace, type ShownPlace } from '../support/shown.tsx';

let page: ShownPlace;
afterEach(() => { page.end(); });

const findings = () => page.deskWindow.worked.get().laid!.findings;
const words = (selector: string) => page.all(selector).map((element) => element.textContent);

describe('the place Check', () => {
  it('shows every finding, what to fix first at the top, result by result', async () => {
    page = await showPlace(CheckPlace, 'tight-curve');
    const groups = inOrder(findings());
    expect(groups[0]!.result).toBe('fix');
    // The form counts its openings from 1, the file from 0.
    const said = (where: string) => where.replace(/openings\[(\d)\]/g, (_, index: string) => `Opening ${String(Number(index) + 1)}`);
    expect(words('.finding .finding-where')).toEqual(groups.flatMap((group) => group.findings.map((finding) => said(finding.where))));
    expect(words('.finding .finding-where').join()).toContain('Opening 1');
    expect(words('.finding b.result')).toEqual(groups.flatMap((group) => group.findings.map(() => say(`result.${group.result}`))));
  });

  it('says of each its measure against its limit, how far to trust it and its source', async () => {
    page = await showPlace(CheckPlace, 'kalgara-yard');
    const radius = page.find('.finding', 'Crowd pen radius to the face');
    // 3500 mm in the project file; 120 to 144 in are 3048 to 3657.6 mm.
    expect(radius.textContent).toContain('3500 mm, limit 3048 to 3657.6 mm');
    expect(radius.textContent).toContain('from memory, no source');
    const law = page.find('.finding', 'Single-file chute length');
    expect(law.textContent).toContain('Oklahoma State Univ. Extension BAE-1219');
  });

  it('says how many head the facility takes, in the project\'s units', async () => {
    page = await showPlace(CheckPlace, 'kalgara-yard');
    const { capacity } = page.deskWindow.worked.get().laid!;
    expect(capacity).toHaveLength(3);
    expect(words('.capacity li')).toEqual(capacity);
    expect(capacity[0]).toContain(' m2');
  });

  it('counts and hides results', async () => {
    page = await showPlace(CheckPlace, 'tight-curve');
    const count = (result: string) => findings().filter((finding) => finding.result === result).length;
    const look = page.find('.check-filter button', 'Look');
    expect(look.textContent).toBe(`Look ${String(count('look'))}`);
    page.press(look);
    expect(look.getAttribute('aria-pressed')).toBe('false');
    expect(page.all('.finding')).toHaveLength(findings().length - count('look'));
    page.press(look);
    expect(page.all('.finding')).toHaveLength(findings().length);
  });

  it('shows those of the station alone that is looked at', async () => {
    page = await showPlace(CheckPlace);
    const runs = page.deskWindow.worked.get().laid!.stations.runs.map((run) => run.run);
    page.change(() => { page.deskWindow.select({ run: 'chute-2' }); });
    const named = findings().filter((finding) => namedRuns(finding.where, runs).includes('chute-2'));
    expect(named.length).toBeGreaterThan(0);
    expect(named.length).toBeLessThan(findings().length);
    expect(page.all('.finding')).toHaveLength(named.length);
    page.press(page.find('.check-filter button', 'Whole walk'));
    expect(page.deskWindow.selection.get().run).toBeNull();
  });

  it('chooses one and leads to its place and its field', async () => {
    page = await showPlace(CheckPlace, 'tight-curve');
    const index = findings().findIndex((finding) => finding.id === 'crowd-radius');
    page.press(page.find('.finding', 'Crowd pen radius to the face'));
    expect(page.deskWindow.selection.get().finding).toBe(index);
    expect(page.find('.finding[aria-pressed="true"]').textContent).toContain('Crowd pen radius');
    page.press(page.find('.finding-detail button', 'Lay out'));
    expect(page.deskWindow.place.get()).toBe('lay-out');
    expect(page.deskWindow.selection.get()).toMatchObject({ finding: index, run: 'crowd-pen' });
    page.press(page.find('.finding-detail button', 'crowdPen.radius'));
    expect(page.deskWindow.place.get()).toBe('brief');
    expect(page.deskWindow.selection.get().field).toBe('crowdPen.radius');
  });

  it('shows the cautions whole, local codes first, and every default with the way to its field', async () => {
    page = await showPlace(CheckPlace);
    const cautions = words('.cautions li');
    expect(cautions[0]).toMatch(/^Local codes and licensed practice come first/);
    for (const key of CAUTIONS) expect(cautions).toContain(say(key));
    const defaults = page.deskWindow.worked.get().answer!.defaults;
    expect(words('.defaults tbody button')).toEqual(defaults.map((used) => used.path));
    page.press(page.all('.defaults tbody button')[0]!);
    expect(page.deskWindow.selection.get().field).toBe(defaults[0]!.path);
  });

  it('says of a project with faults that its findings are those of the last good one', async () => {
    page = await showPlace(CheckPlace);
    const before = words('.finding-where');
    page.change(() => { page.deskWindow.session.setField('chute.width', 'wide', { label: 'x' }); });
    await page.until('the fault', () => (page.deskWindow.worked.get().answer?.faults.length ?? 0) > 0);
    expect(page.find('[role="status"]').textContent).toContain('faults (1)');
    expect(words('.finding-where')).toEqual(before);
    page.press(page.find('[role="status"] button'));
    expect(page.deskWindow.selection.get().field).toBe('chute.width');
  });
});
