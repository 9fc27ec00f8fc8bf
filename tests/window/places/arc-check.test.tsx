import '../support/page.ts';
import { afterEach, describe, expect, it } from 'vitest';
import { MakePlace } from '../../../renderer/places/make/MakePlace.tsx';
import { showPlace, type ShownPlace } from '../support/shown.tsx';

let page: ShownPlace;
afterEach(() => { page.end(); });

const open = async (example: string): Promise<void> => {
  page = await showPlace(MakePlace, example);
  await page.until('the schedules', () => page.all('.flat-file ol:last-child button').length > 1);
  page.press(page.find('.flat-file ol:last-child button', 'Bend schedule'));
  await page.until('the form', () => page.all('.arc-check').length === 1);
};
const field = (label: string): HTMLInputElement => {
  const found = page.all('.arc-check label').find((one) => one.textContent.startsWith(label))?.querySelector('input');
  if (!found) throw new Error(`no field ${label}`);
  return found;
};
const told = (): string => page.find('.arc-check output').textContent;

describe('the arc check beside the bend schedule', () => {
  it.each([['juniper-flat', 1], ['kalgara-yard', 25.4]] as const)('holds what was measured against the chosen mark, in %s', async (example, per) => {
    await open(example);
    const bends = (await page.deskWindow.work.ask('tables', null)).find((table) => table.id === 'bends')!;
    const row = bends.rows[0]!;
    const figure = (name: string): number => Number(row[bends.columns.findIndex((column) => column.name === name)]) / per;
    expect(page.find('.arc-check').textContent).toContain('Choose a mark');
    page.change(() => { page.deskWindow.select({ mark: row[bends.markColumn!]! }); });
    expect(page.find('.arc-check').textContent).toContain(`Against ${row[bends.markColumn!]!}`);
    // What a welder reads on a piece that is true, and on one bent to four fifths of its radius.
    const rise = (radius: number): number => radius - Math.sqrt(radius ** 2 - 18 ** 2);
    page.type(field('Chord'), '36');
    page.type(field('Rise'), String(rise(figure('inside_radius'))));
    expect(told()).toMatch(/: within\./);
    page.type(field('Rise'), String(rise(0.8 * figure('inside_radius'))));
    expect(told()).toMatch(/bent too tight.*: not within\./);
  });

  it('names each field that holds no length, and takes three points too', async () => {
    await open('juniper-flat');
    expect(told()).toContain('Measure on the concave side');
    page.type(field('Chord'), 'long');
    page.type(field('Read to'), 'x');
    expect(told()).toMatch(/Chord: no length.*Read to: .*Rise at its middle: no length/);
    page.type(field('Read to'), '1/16');
    const by = page.find('.arc-check select') as unknown as HTMLSelectElement;
    page.change(() => { by.value = 'points'; by.dispatchEvent(new Event('change', { bubbles: true })); });
    page.type(field('Point 1'), '2, 3');
    page.type(field('Point 2'), '20');
    page.type(field('Point 3'), '38, 3');
    expect(told()).toMatch(/Point 2: not two lengths/);
    page.type(field('Point 2'), '20, 4 1/8');
    // c²/(8s) + s/2 = 1296/9 + 0.5625, by hand.
    expect(told()).toMatch(/144\.56[23]/);
  });
});
