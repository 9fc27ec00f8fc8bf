import '../support/page.ts';
import { afterEach, describe, expect, it } from 'vitest';
import { StakeOutPlace } from '../../../renderer/places/stake-out/StakeOutPlace.tsx';
import { showPlace, type ShownPlace } from '../support/shown.tsx';

let page: ShownPlace;
afterEach(() => { page.end(); });

const open = async (example?: string): Promise<void> => {
  page = await showPlace(StakeOutPlace, example);
  await page.until('a drawing', () => page.all('.sheet-strokes').length === 1);
};

describe('the place Stake out', () => {
  it('shows every point with its ties, the third one where there is a C', async () => {
    await open('kalgara-yard');
    const { rows } = await page.deskWindow.work.ask('stakes', null);
    expect(page.find('.schedule table').getAttribute('aria-rowcount')).toBe(String(rows.length + 1));
    expect(page.find('.schedule thead').textContent).toContain('Tie C, mm');
    expect(page.find('.schedule tbody').textContent).toContain('350 x 1000 mm');
    // Project file: B at 6 m, -1.5 m from A; C at -2 m, 9 m. 6185 mm is the root of 6000² + 1500².
    expect(page.find('.controls li:nth-child(2)').textContent).toContain('A to B 6185 mm');
    expect(page.find('.controls li:nth-child(3)').textContent).toContain('x -2000 mm, y 9000 mm');
    expect(page.find('.controls p').textContent).toContain('weighbridge slab');
    expect(page.find('.controls p').textContent).toContain('Have buried lines located and marked');
  });

  it('leads to the fields of its control points', async () => {
    await open();
    page.press(page.find('.controls button', 'Change B'));
    expect(page.deskWindow.place.get()).toBe('brief');
    expect(page.deskWindow.selection.get().field).toBe('control.b');
  });

  it('shows a row\'s point on the drawing that calls it out, and a point\'s row in the table', async () => {
    await open();
    const button = page.find('.schedule tbody button', 'H2');
    page.press(button);
    expect(button.getAttribute('aria-pressed')).toBe('true');
    await page.until('its drawing', () => page.find('.stake-drawing button[aria-current]').textContent === '202' && page.all('.sheet-told circle').length === 1);
    const other = page.all('.spot').find((spot) => spot.getAttribute('aria-label') === 'H5')!;
    page.press(other);
    expect(page.find('tr.chosen').textContent).toContain('H5');
    page.press(page.find('.stake-drawing li button', '201'));
    await page.until('the whole site', () => page.find('.sheet-view > svg', /./).getAttribute('aria-label')!.includes('201'));
    expect(page.all('.sheet-told circle')).toHaveLength(1);
  });

  it('calls out one point after the other by keys, and keeps which are set', async () => {
    await open();
    page.press(page.find('.controls button', 'Call out'));
    const pane = page.find('.call-out', /./);
    expect(document.activeElement).toBe(pane);
    const name = () => page.find('.call-name').textContent;
    const { rows } = await page.deskWindow.work.ask('stakes', null);
    expect(name()).toBe('A');
    page.key(pane, 'ArrowLeft');
    expect(name()).toBe(rows.at(-1)!.point);
    page.key(pane, 'ArrowRight');
    page.key(pane, 'ArrowRight');
    page.key(pane, 'ArrowRight');
    expect(name()).toBe(rows[2]!.point);
    expect(page.find('.call-facts').textContent).toContain('1\'-0" x 3\'-0"');
    page.key(pane, 'Enter');
    expect((page.find('.call-out input') as HTMLInputElement).checked).toBe(true);
    expect(page.find('.call-head').textContent).toContain(`1 of ${String(rows.length)} set`);
    page.press(page.find('.call-steps button', 'Next point'));
    expect((page.find('.call-out input') as HTMLInputElement).checked).toBe(false);
    page.key(pane, 'Escape');
    await page.until('the list', () => page.all('.schedule').length === 1);
    const row = page.all('.schedule tbody tr[aria-rowindex]')[2]!;
    expect(row.querySelectorAll('td')[1]!.textContent).toBe('set');
  });
});
