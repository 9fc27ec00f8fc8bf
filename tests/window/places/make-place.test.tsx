import '../support/page.ts';
import { afterEach, describe, expect, it } from 'vitest';
import { MakePlace } from '../../../renderer/places/make/MakePlace.tsx';
import { showPlace, type ShownPlace } from '../support/shown.tsx';

let page: ShownPlace;
afterEach(() => { page.end(); });

const open = async (example?: string): Promise<void> => {
  page = await showPlace(MakePlace, example);
  await page.until('a drawing', () => page.all('.sheet-strokes').length === 1);
};
const take = async (label: string): Promise<void> => {
  page.press(page.find('.flat-file button', label));
  await page.until(label, () => page.all('.sheet-view, .schedule').length === 1 && page.find('.sheet-view > svg, .schedule-pane', /./).getAttribute('aria-label')!.includes(label));
};
const marks = (selector: string) => page.all(selector).map((element) => element.getAttribute('aria-label') ?? element.textContent);

describe('the place Make', () => {
  it('lists every drawing with number, title and paper, and every schedule', async () => {
    await open('kalgara-yard');
    const sheets = await page.deskWindow.work.ask('sheets', null);
    const tables = await page.deskWindow.work.ask('tables', null);
    const lists = page.all('.flat-file ol');
    expect([...lists[0]!.querySelectorAll('button')].map((button) => button.textContent)).toEqual(sheets.map((sheet) => `${sheet.number}${sheet.title}${sheet.paper}`));
    expect([...lists[1]!.querySelectorAll('button span')].map((title) => title.textContent)).toEqual(tables.map((table) => table.title));
  });

  it('asks for a drawing when it is seen, once, and again only after the design changed', async () => {
    await open();
    const count = (kind: string) => page.asked.filter((one) => one === kind).length;
    expect([count('sheets'), count('sheet'), count('tables')]).toEqual([1, 1, 1]);
    await take('Plan');
    expect(count('sheet')).toBe(2);
    page.change(() => { page.deskWindow.select({ mark: 'P1' }); });
    await take('Cover');
    expect([count('sheets'), count('sheet'), count('tables')]).toEqual([1, 2, 1]);
    page.change(() => { page.deskWindow.session.setField('title', 'Another', { label: 'x' }); });
    await page.until('the drawing of the change', () => page.host.textContent.includes('Another'));
    expect([count('sheets'), count('sheet'), count('tables')]).toEqual([2, 3, 2]);
  });

  it('keeps the last good drawing where the project has faults, and says so', async () => {
    await open();
    const before = page.find('.sheet-strokes', /./).innerHTML;
    page.change(() => { page.deskWindow.session.setField('crowdPen.radius', '1 in', { label: 'x' }); });
    await page.until('the fault', () => (page.deskWindow.worked.get().answer?.faults.length ?? 0) > 0);
    expect(page.find('.freshness').textContent).toContain('This is the last that could be drawn');
    expect(page.find('.sheet-strokes', /./).innerHTML).toBe(before);
    expect(page.asked.filter((one) => one === 'sheets')).toHaveLength(1);
  });

  it('shows a mark that is chosen on a drawing in the strip, on other drawings and in the schedules', async () => {
    await open();
    await take('Panels: alley-1 left');
    const mark = page.all('.spot')[0]!.getAttribute('aria-label')!;
    page.press(page.all('.spot')[0]!);
    expect(page.deskWindow.selection.get().mark).toBe(mark);
    expect(page.all('.sheet-told *').length).toBeGreaterThan(0);
    expect(page.all('.spot[aria-pressed="true"]').every((spot) => spot.getAttribute('aria-label') === mark)).toBe(true);
    const sheets = await page.deskWindow.work.ask('sheets', null);
    const showing = sheets.filter((sheet) => sheet.marks.includes(mark)).map((sheet) => sheet.number);
    expect(marks('.piece-ways button').filter((label) => /^\d/.test(label))).toEqual(showing);
    page.press(page.find('.piece-ways button', 'Piece list'));
    await page.until('the list', () => page.all('.schedule').length === 1);
    const pieces = (await page.deskWindow.work.ask('tables', null)).find((table) => table.id === 'pieces')!;
    const rows = pieces.rows.filter((row) => row[0] === mark);
    expect(page.all('.schedule tr.chosen').length).toBeGreaterThan(0);
    expect(page.find('.piece-ways button', 'Piece list').textContent).toContain(String(rows.length));
    expect(page.find('.piece-strip dl').textContent).toContain(String(rows.reduce((sum, row) => sum + Number(row[pieces.columns.findIndex((column) => column.name === 'quantity')]), 0)));
    page.press(page.find('.piece-ways button', 'In the plan'));
    expect(page.deskWindow.place.get()).toBe('lay-out');
    expect(page.deskWindow.selection.get().mark).toBe(mark);
  });

  it('goes from mark to mark by the arrow keys and chooses by Enter, one stop of the tab key for all', async () => {
    await open();
    await take('Panels: alley-1 left');
    const spots = page.all('.spot');
    expect(spots.filter((spot) => spot.tabIndex === 0)).toHaveLength(1);
    page.change(() => { spots[0]!.focus(); });
    page.key(spots[0]!, 'ArrowRight');
    expect(document.activeElement).toBe(spots[1]);
    page.key(spots[1]!, 'Enter');
    expect(page.deskWindow.selection.get().mark).toBe(spots[1]!.getAttribute('aria-label'));
    page.key(spots[1]!, 'End');
    expect(document.activeElement).toBe(spots.at(-1));
  });

  it('looks nearer and farther by + - 0 and by its buttons', async () => {
    await open();
    const svg = page.find('.sheet-view > svg', /./);
    const whole = svg.getAttribute('viewBox')!;
    expect(whole).toBe('0 0 17 11');
    page.key(svg, '+');
    expect(Number(svg.getAttribute('viewBox')!.split(' ')[2])).toBeCloseTo(17 / 1.25, 5);
    page.key(svg, 'ArrowRight');
    expect(Number(svg.getAttribute('viewBox')!.split(' ')[0])).toBeGreaterThan((17 - 17 / 1.25) / 2);
    page.key(svg, '0');
    expect(svg.getAttribute('viewBox')).toBe(whole);
    page.press(page.find('.sheet-tools button', 'Larger'));
    page.press(page.find('.sheet-tools button', 'Smaller'));
    expect(svg.getAttribute('viewBox')).toBe(whole);
  });

  it('sorts and narrows a schedule, its figures at the right, and tells how many rows there are', async () => {
    await open();
    await take('Piece list');
    page.press(page.find('.flat-file ol:last-child button', 'Piece list'));
    await page.until('the table', () => page.all('.schedule table').length === 1);
    const pieces = (await page.deskWindow.work.ask('tables', null)).find((table) => table.id === 'pieces')!;
    expect(page.find('.schedule table').getAttribute('aria-rowcount')).toBe(String(pieces.rows.length + 1));
    const column = pieces.columns.findIndex((one) => one.name === 'length');
    const cells = () => page.all('.schedule tbody tr:not([aria-hidden])').map((row) => row.querySelectorAll('td')[column]!.textContent);
    expect(page.all('.schedule tbody td.figure').length).toBeGreaterThan(0);
    page.press(page.all('.schedule th button')[column]!);
    const sorted = pieces.rows.map((row) => row[column]!).sort((a, b) => Number(a) - Number(b));
    expect(cells()).toEqual(sorted.slice(0, cells().length));
    expect(page.all('.schedule th')[column]!.getAttribute('aria-sort')).toBe('ascending');
    page.press(page.all('.schedule th button')[column]!);
    expect(cells()[0]).toBe(sorted.at(-1));
    page.type(page.find('.schedule input') as HTMLInputElement, 'post crowd-pen');
    const posts = pieces.rows.filter((row) => row.includes('post') && row.includes('crowd-pen')).length;
    expect(posts).toBeGreaterThan(0);
    expect(page.find('.schedule output').textContent).toBe(`${String(posts)} of ${String(pieces.rows.length)}`);
    expect(page.find('.schedule table').getAttribute('aria-rowcount')).toBe(String(posts + 1));
  });
});
