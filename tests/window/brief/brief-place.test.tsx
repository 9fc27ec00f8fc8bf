// @vitest-environment jsdom
import { afterEach, describe, expect, test, vi } from 'vitest';
import { FORMAT, FORMAT_ROOT } from '../../../core/brief/format/index.ts';
import { BriefPlace } from '../../../renderer/places/brief/BriefPlace.tsx';
import { CHAPTERS } from '../../../renderer/places/brief/chapters.ts';
import { leastProject, put, sampleProject } from '../../support/change-project.ts';
import { openWindow, type OpenWindow } from './open-window.tsx';

let window: OpenWindow;
let sought: string[] = [];
const open = async (project: object): Promise<void> => {
  sought = [];
  // jsdom has no layout: what would come into sight is noted.
  Element.prototype.scrollIntoView = function note(this: Element) { if (this.closest('nav') === null) sought.push(this.getAttribute('data-field') ?? this.id); };
  window = await openWindow(project, <BriefPlace />);
};
afterEach(() => window.close());

const at = (path: string): HTMLElement => {
  const found = [...window.page.querySelectorAll<HTMLElement>('[data-field]')].find((element) => element.dataset['field'] === path);
  if (found === undefined) throw new Error(`nothing for ${path}`);
  return found;
};
const input = (path: string): HTMLInputElement => at(path).querySelector('input, select') as HTMLInputElement;
const entryOf = (path: string): HTMLElement => at(path).closest('.entry') as HTMLElement;
const legends = (path: string): readonly (string | null)[] => [...at(path).querySelectorAll(':scope > .entries > .entry > legend')].map((legend) => legend.textContent);

describe('the form', () => {
  test('has every field of the contract\'s example, each with a label', async () => {
    await open(sampleProject());
    await window.press(window.button('Add: Return alley', at('returnAlley')));
    const shown = new Set([...window.page.querySelectorAll<HTMLElement>('[data-field]')].map((element) => element.dataset['field']?.replace(/\["[^"]*"\]/g, '[*]').replace(/\[\d+\]/g, '[]')));
    const folded = /^fences\.(alley|junction|pad|pens|ramp)\.|^fences\.\w+\.(left|right)\.|^fences\.\w+\.(left|right)$/;
    const filled = FORMAT.filter(({ what, pattern }) => !['fixed'].includes(what.kind) && !folded.test(pattern) && !/^(marks|shop\.(roll|prices|sections|rack))\[|^returnAlley\.runs\[\]|^revisions\[\]|^openings\[\]\.(swings|hangs|hingePost)$|^site\.work\.months\[|\.open\[|^control\.|^ramps\[\]\.at|^fences$/.test(pattern));
    expect(filled.map(({ pattern }) => pattern).filter((pattern) => !shown.has(pattern))).toEqual(['alley.runs[].insideRadius', 'alley.runs[].angle', 'alley.runs[].hand']);
    const nameless = [...window.page.querySelectorAll('input, select')].filter((control) =>
      control.getAttribute('aria-label') === null && window.page.querySelector(`label[for="${control.id}"]`) === null && control.closest('label') === null);
    expect(nameless).toEqual([]);
  });

  test('asks about everything that the format has at its top but what says which format it is', () => {
    const asked = CHAPTERS.flatMap(({ paths }) => paths);
    const top = FORMAT_ROOT.what.kind === 'group' ? Object.keys(FORMAT_ROOT.what.fields) : [];
    expect(asked.toSorted()).toEqual(top.filter((name) => name !== 'format' && name !== 'version').toSorted());
  });

  test('of the least project shows every default as one', async () => {
    await open(leastProject());
    expect(at('cattle.eyeHeight').textContent).toContain('default: 4\'-2"');
    expect(at('alley.runs').textContent).toContain('default: 20\'-0" straight');
    expect(at('shop.sheets').textContent).toContain('default: 48" x 120", 60" x 120"');
    expect(at('control.b').textContent).toContain('default: 20\'-0", 0"');
    expect(at('openings').textContent).toContain('default: none');
    expect(at('fences.alley').textContent).toContain('all as the crowd pen\'s');
  });
});

describe('runs', () => {
  test('are added, and begin with figures that are in sight', async () => {
    await open(sampleProject());
    await window.press(window.button('Add: arc', at('chute.runs')));
    expect(window.value('chute.runs[3]')).toEqual({ kind: 'arc', insideRadius: '16 ft', angle: 45, hand: 'right' });
    expect(legends('chute.runs')).toEqual(['chute-1: straight', 'chute-2: arc', 'chute-3: straight', 'chute-4: arc']);
    expect(document.activeElement?.id).toBe(at('chute.runs[3]').querySelector('select')?.id);
  });

  test('are moved up and down; the hand stays on the run that it moved', async () => {
    await open(sampleProject());
    await window.press(window.button('Move up: chute-2'));
    expect(legends('chute.runs')).toEqual(['chute-1: arc', 'chute-2: straight', 'chute-3: straight']);
    expect(window.value('chute.runs[0].insideRadius')).toBe('16 ft');
    expect(document.activeElement?.closest('.entry')?.getAttribute('data-field')).toBe('chute.runs[0]');
    await window.press(window.button('Move down: chute-1'));
    expect(legends('chute.runs')).toEqual(['chute-1: straight', 'chute-2: arc', 'chute-3: straight']);
    expect(window.button('Move up: chute-1').disabled).toBe(true);
    expect(window.button('Move down: chute-3').disabled).toBe(true);
  });

  test('are removed, and undo brings each back as it was', async () => {
    await open(sampleProject());
    const before = window.value('chute.runs');
    await window.press(window.button('Remove: chute-2'));
    expect(legends('chute.runs')).toEqual(['chute-1: straight', 'chute-2: straight']);
    await window.press(window.button('Remove: chute-1'));
    await window.undo();
    await window.undo();
    expect(window.value('chute.runs')).toEqual(before);
    expect(legends('chute.runs')).toEqual(['chute-1: straight', 'chute-2: arc', 'chute-3: straight']);
  });

  test('become another kind and leave nothing of the first behind', async () => {
    await open(sampleProject());
    await window.type(input('chute.runs[0].kind'), 'arc');
    expect(window.value('chute.runs[0]')).toEqual({ kind: 'arc', insideRadius: '16 ft', angle: 45, hand: 'right' });
    expect(window.page.querySelector('.fault-summary')).toBeNull();
  });

  test('added to an alley that the file does not say stand behind the default, written out', async () => {
    await open(leastProject());
    await window.press(window.button('Add: straight', at('alley.runs')));
    expect(window.value('alley.runs')).toEqual([{ kind: 'straight', length: 240 }, { kind: 'straight', length: '10 ft' }]);
    await window.press(window.button('Leave to default: Runs of the alley'));
    expect(window.value('alley.runs')).toBeUndefined();
  });
});

describe('faults', () => {
  test('stand beside their field and in a list that leads there', async () => {
    await open(sampleProject());
    await window.type(input('chute.runs[1].angle'), '300');
    expect(at('chute.runs[1].angle').querySelector('.field-fault')?.textContent).toBe('300 is out of range; allowed is 5 to 270 degrees');
    const summary = window.page.querySelector('.fault-summary') as HTMLElement;
    expect(summary.querySelector('h2')?.textContent).toBe('1 at fault');
    await window.leave(input('chute.runs[1].angle'));
    await window.press(window.button('Single-file chute: Angle (chute.runs[1].angle)', summary));
    expect(document.activeElement?.id).toBe(input('chute.runs[1].angle').id);
    expect(sought.at(-1)).toBe('chute.runs[1].angle');
    expect(window.page.querySelector('.chapter-list [aria-current], .chapter-list .tally')).not.toBeNull();
  });

  test('of a group or a list stand at it, those of a field that the format has not can be taken out', async () => {
    await open(put(put(put(sampleProject(), ['crowdPen.radios', 5]), ['chute.runs', []]), ['colour', 'red']));
    expect(at('chute.runs').querySelector('.group-faults')?.textContent).toContain('0 entries; allowed is 1 to 40');
    expect(at('crowdPen').textContent).toContain('crowdPen.radios: not a field of the format');
    await window.press(window.button('Take out: crowdPen.radios'));
    expect(window.value('crowdPen.radios')).toBeUndefined();
    await window.press(window.button('Take out: colour'));
    await window.press(window.button('Add: straight', at('chute.runs')));
    expect(window.page.querySelector('.fault-summary')).toBeNull();
  });

  test('every fault of a project with one in each kind of place is shown at its place', async () => {
    const project = [
      ['title', ''], ['site.work.months', [10, 10, 13]], ['cattle.flighty', 'yes'], ['alley.runs', [{ kind: 'loop' }, { kind: 'straight', length: 1, angle: 4 }]],
      ['fences.alley', { left: { solidTo: 90 } }], ['openings', [{ kind: 'man-gate', run: 'nowhere', at: 5 }]], ['shop.stock', { 'pipe 2 sch 40': [5], 'pipe 77': ['21 ft'] }],
      ['shop.sheets', [[5, 120], [48]]], ['shop.sections', { 'used 2': { outside: 2, wall: 3 } }], ['shop.roll', { 'pipe 2 sch 40': {} }], ['control.b', [0, 0]],
      ['squeezePad.roof.open', ['in', 'up']], ['marks', { a: 'r1' }], ['floors', 7],
    ].reduce((value, change) => put(value, change as [string, unknown]), sampleProject());
    await open(project);
    const faults = window.desk.worked.get().answer?.faults ?? [];
    expect(faults.length).toBeGreaterThan(16);
    const summary = window.page.querySelector('.fault-summary') as HTMLElement;
    const shown = [...window.page.querySelectorAll('.field-fault, .group-faults')].filter((element) => !summary.contains(element)).map((element) => element.textContent).join('\n');
    expect(faults.filter(({ words }) => !shown.includes(words)).map(({ path, words }) => `${path}: ${words}`)).toEqual([]);
    expect(summary.querySelectorAll('li').length).toBe(faults.length);
  });
});

describe('other places lead here', () => {
  test('a field is brought into sight and under the hand, a folded fence unfolded', async () => {
    await open(sampleProject());
    expect(window.page.querySelector('[data-field="fences.alley.left.height"]')).toBeNull();
    await window.select({ field: 'fences.alley.left.height' });
    expect(document.activeElement?.id).toBe(input('fences.alley.left.height').id);
    await window.select({ field: 'shop.stock["pipe 2 sch 40"][0]' });
    expect(document.activeElement?.id).toBe(input('shop.stock["pipe 2 sch 40"][0]').id);
  });

  test('a field that has no row leads to the group around it', async () => {
    await open(leastProject());
    await window.select({ field: 'openings[3].at' });
    expect(sought.at(-1)).toBe('openings');
  });

  test('a run of the strip brings its fields into sight', async () => {
    await open(sampleProject());
    for (const [run, field] of [['chute-2', 'chute.runs[1]'], ['alley-1', 'alley.runs[0]'], ['crowd-pen', 'crowdPen'], ['junction', 'fences.junction'], ['squeeze-pad', 'squeezePad'],
      ['sort-1', 'sortPens[0]'], ['load-1', 'ramps[0]'], ['unload-1', 'ramps[1]']] as const) {
      await window.select({ run });
      expect(sought.at(-1)).toBe(field);
    }
    expect(at('ramps[1]').classList.contains('chosen')).toBe(true);
  });
});

describe('a fence folds away what is all as the one around it', () => {
  test('but never a field that is being typed in, nor a fault', async () => {
    await open(sampleProject());
    const rows = (): number => at('fences.alley').querySelectorAll('.field').length;
    expect(rows()).toBe(0);
    await window.press(at('fences.alley').querySelector('.fold button') as HTMLElement);
    expect(rows()).toBe(10);
    await window.type(input('fences.alley.height'), '7');
    expect((at('fences.alley').querySelector('.fold button') as HTMLButtonElement).disabled).toBe(true);
    await window.type(input('fences.alley.height'), '');
    expect(rows()).toBe(10);
    await window.press(at('fences.alley').querySelector('.fold button') as HTMLElement);
    expect(rows()).toBe(0);
    expect(window.value('fences.alley.height')).toBeUndefined();
  });
});

describe('tables by name', () => {
  test('take a new name, and no name twice', async () => {
    await open(sampleProject());
    const stock = at('shop.stock');
    const name = stock.querySelector('form input') as HTMLInputElement;
    await window.type(name, 'pipe 2 sch 40');
    expect(stock.querySelector('form')?.textContent).toContain('is in the list already');
    expect((stock.querySelector('form button') as HTMLButtonElement).disabled).toBe(true);
    await window.type(name, 'pipe 4 sch 40');
    await window.press(stock.querySelector('form button') as HTMLElement);
    expect(window.value('shop.stock["pipe 4 sch 40"]')).toEqual(['']);
    await window.type(input('shop.stock["pipe 4 sch 40"][0]'), '21 ft');
    expect(window.value('shop.stock["pipe 4 sch 40"]')).toEqual(['21 ft']);
    expect(window.page.querySelector('.fault-summary')).toBeNull();
  });

  test('are renamed in their place, when the name is left', async () => {
    await open(sampleProject());
    const name = window.control('Name', entryOf('shop.stock["pipe 2 sch 40"]'));
    await window.type(name, 'pipe 3 sch 40');
    expect(Object.keys(window.value('shop.stock') as object)).toEqual(['pipe 2 sch 40', 'pipe 2 1/2 sch 40']);
    await window.leave(name);
    expect(Object.keys(window.value('shop.stock') as object)).toEqual(['pipe 3 sch 40', 'pipe 2 1/2 sch 40']);
    expect(window.value('shop.stock["pipe 3 sch 40"]')).toEqual(['21 ft']);
    await window.undo();
    expect(Object.keys(window.value('shop.stock') as object)).toEqual(['pipe 2 sch 40', 'pipe 2 1/2 sch 40']);
  });

  test('never lose an entry to a name that is another\'s', async () => {
    await open(sampleProject());
    const name = window.control('Name', entryOf('shop.stock["pipe 2 sch 40"]'));
    await window.type(name, 'pipe 2 1/2 sch 40');
    await window.leave(name);
    expect(window.value('shop.stock')).toEqual(sampleProject()['shop'] === undefined ? undefined : (sampleProject()['shop'] as { stock: unknown }).stock);
    expect(entryOf('shop.stock["pipe 2 sch 40"]').textContent).toContain('is in the list already');
  });

  test('lose the entry that is removed, and marks are only read', async () => {
    await open(put(put(sampleProject(), ['shop.prices', { 'pipe 2 sch 40': 3.5 }]), ['marks', { 'a rail': 'R1' }]));
    await window.type(input('shop.prices["pipe 2 sch 40"]'), '');
    expect(window.value('shop.prices["pipe 2 sch 40"]')).toBe('');
    await window.press(window.button('Remove: pipe 2 sch 40', at('shop.prices')));
    expect(window.value('shop.prices')).toEqual({});
    expect(at('marks').textContent).toContain('R1 a rail');
    expect(at('marks').querySelector('input, select, form')).toBeNull();
  });

  test('a section of the shop\'s own is an outside size and a wall', async () => {
    await open(sampleProject());
    const form = at('shop.sections').querySelector('form') as HTMLFormElement;
    await window.type(form.querySelector('input') as HTMLInputElement, 'used 2 7/8');
    await window.press(form.querySelector('button') as HTMLElement);
    const [outside, wall] = [...at('shop.sections["used 2 7/8"]').querySelectorAll<HTMLInputElement>('.pair-part input')];
    await window.type(outside as HTMLInputElement, '2.84');
    await window.type(wall as HTMLInputElement, '0.2');
    expect(window.value('shop.sections["used 2 7/8"]')).toEqual({ outside: 2.84, wall: 0.2 });
    await window.type(outside as HTMLInputElement, '2 x 3');
    expect(window.value('shop.sections["used 2 7/8"].outside')).toEqual([2, 3]);
    expect(window.page.querySelector('.fault-summary')).toBeNull();
  });
});

describe('bars on the rack', () => {
  test('are lines of a length, how many and a price, and no one sees how the file holds them', async () => {
    await open(put(sampleProject(), ['shop.rack', { 'pipe 2 sch 40': [{ length: '16 ft', count: 6 }] }]));
    const rack = at('shop.rack["pipe 2 sch 40"]');
    expect([...rack.querySelectorAll('input')].map(({ value }) => value)).toEqual(['16 ft', '6', '']);
    expect(rack.textContent).toContain('16\'-0"');
    await window.press(window.button('Add: Bars of this section', rack));
    const [length, count, price] = [...at('shop.rack["pipe 2 sch 40"][1]').querySelectorAll<HTMLInputElement>('input')];
    await window.type(length as HTMLInputElement, '9 ft');
    expect(at('shop.rack["pipe 2 sch 40"]').querySelector('.field-fault')?.textContent).toContain('allowed is');
    await window.type(count as HTMLInputElement, '2');
    await window.type(price as HTMLInputElement, '7.5');
    expect(window.value('shop.rack["pipe 2 sch 40"][1]')).toEqual({ length: '9 ft', count: 2, price: 7.5 });
    expect(window.page.querySelector('.fault-summary')).toBeNull();
    await window.type(price as HTMLInputElement, '');
    expect(window.value('shop.rack["pipe 2 sch 40"][1]')).toEqual({ length: '9 ft', count: 2 });
    await window.press(window.button('Remove: Bars of this section 1', rack));
    expect(window.value('shop.rack["pipe 2 sch 40"]')).toEqual([{ length: '9 ft', count: 2 }]);
  });
});

describe('a figure is read beside what is typed', () => {
  test('a share in hundredths, a price by what it is the price of', async () => {
    await open(put(put(leastProject(), ['floors.fall', 0.025]), ['shop.prices', { 'pipe 2 sch 40': 4.85, '12 ga': 6, concrete: 165, 'pipe 2 sch 40=24 ft': 90, hinge: 12 }]));
    const read = (path: string): string => at(path).querySelector('.reading')?.textContent ?? '';
    expect(read('floors.fall')).toBe('reads 2.5 %');
    expect(at('shop.springback').querySelector('.standing')?.textContent).toBe('default: 0, 0 %');
    const price = (name: string): string => read(/^\w+$/.test(name) ? `shop.prices.${name}` : `shop.prices["${name}"]`);
    expect(['pipe 2 sch 40', '12 ga', 'concrete', 'pipe 2 sch 40=24 ft', 'hinge'].map(price)).toEqual(['a foot', 'a square foot', 'a cubic yard', 'for one such bar', '']);
  });
});

describe('groups that are there or not', () => {
  test('a return alley begins at the pad where there is one, can be set out as it begins, and is taken out whole', async () => {
    await open(put(leastProject(), ['squeezePad', {}]));
    await window.press(window.button('Add: Return alley', at('returnAlley')));
    expect(window.value('returnAlley.from.run')).toBe('squeeze-pad');
    expect(window.page.querySelector('.fault-summary')).toBeNull();
    await window.press(window.button('Take out: Return alley', at('returnAlley')));
    expect(window.value('returnAlley')).toBeUndefined();
  });

  test('a pad is added with its defaults, its roof too, and taken out', async () => {
    await open(leastProject());
    await window.press(window.button('Add: Squeeze pad'));
    expect(window.value('squeezePad')).toEqual({});
    expect(at('squeezePad.length').textContent).toContain('default: 12\'-0"');
    await window.press(window.button('Add: Roof'));
    const boxes = [...at('squeezePad.roof.open').querySelectorAll<HTMLInputElement>('input')];
    expect(boxes.map(({ checked }) => checked)).toEqual([true, true, false, false]);
    await window.press(boxes[2] as HTMLElement);
    expect(window.value('squeezePad.roof.open')).toEqual(['in', 'out', 'left']);
    await window.press(window.button('Take out: Squeeze pad'));
    expect(window.value('squeezePad')).toBeUndefined();
  });

  test('a point of the plan keeps the other figure that held', async () => {
    await open(leastProject());
    const [x] = [...at('control.b').querySelectorAll<HTMLInputElement>('input')];
    await window.type(x as HTMLInputElement, '25 ft');
    expect(window.value('control.b')).toEqual(['25 ft', 0]);
    const [cx, cy] = [...at('control.c').querySelectorAll<HTMLInputElement>('input')];
    await window.type(cx as HTMLInputElement, '10');
    expect(window.value('control.c')).toEqual([10, '']);
    expect(at('control.c').querySelector('.field-fault')?.textContent).toContain('allowed is a length');
    await window.type(cy as HTMLInputElement, '20');
    expect(window.page.querySelector('.fault-summary')).toBeNull();
  });
});

test('a page that is drawn again for each key draws only what changed', async () => {
  await open(sampleProject());
  const watched = vi.fn();
  const observer = new MutationObserver((changes) => { watched(changes.map(({ target }) => (target as Element).parentElement?.closest('[data-field]')?.getAttribute('data-field'))); });
  observer.observe(window.page, { subtree: true, childList: true, characterData: true });
  await window.type(input('chute.width'), '29');
  observer.disconnect();
  expect(new Set(watched.mock.calls.flat(2))).toEqual(new Set(['chute.width']));
});
