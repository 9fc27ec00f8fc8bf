// @vitest-environment jsdom
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { FieldRow } from '../../../renderer/parts/field/FieldRow.tsx';
import { sampleProject, put } from '../../support/change-project.ts';
import { openWindow, type OpenWindow } from './open-window.tsx';

let window: OpenWindow;
const open = async (project: object, ...paths: readonly string[]): Promise<void> => {
  window = await openWindow(project, <>{paths.map((path) => <FieldRow key={path} path={path} />)}</>);
};
afterEach(() => window.close());

const row = (path: string): HTMLElement => window.page.querySelector(`[data-field='${path}']`) as HTMLElement;
const input = (path: string): HTMLInputElement => row(path).querySelector('input, select') as HTMLInputElement;

describe('a figure that is typed', () => {
  beforeEach(() => open(sampleProject(), 'chute.width', 'chute.runs[1].angle', 'cattle.weight'));

  test('stands as the file has it, read in the project\'s units beside it', () => {
    expect(input('chute.width').value).toBe('28');
    expect(row('chute.width').textContent).toContain('reads 2\'-4"');
    expect(row('chute.runs[1].angle').textContent).toContain('reads 90°');
    expect(row('cattle.weight').textContent).toContain('reads 1250 lb');
  });

  test('is kept as it is typed, in any unit; a plain number is a number in the file', async () => {
    await window.type(input('chute.width'), '2 ft 6 in');
    expect(window.value('chute.width')).toBe('2 ft 6 in');
    expect(row('chute.width').textContent).toContain('reads 2\'-6"');
    await window.type(input('chute.width'), '30');
    expect(window.value('chute.width')).toBe(30);
    await window.type(input('cattle.weight'), '600 kg');
    expect(window.value('cattle.weight')).toBe('600 kg');
    expect(row('cattle.weight').textContent).toContain('reads 1323 lb');
  });

  test('keeps a point that is on its way to a decimal', async () => {
    await window.type(input('chute.width'), '29.');
    expect(input('chute.width').value).toBe('29.');
    expect(window.value('chute.width')).toBe(29);
    await window.type(input('chute.width'), '29.5');
    expect(window.value('chute.width')).toBe(29.5);
  });

  test('that can\'t be read is not lost: it stays, with what is allowed beside it', async () => {
    await window.type(input('chute.width'), 'two foot');
    await window.leave(input('chute.width'));
    expect(input('chute.width').value).toBe('two foot');
    expect(window.value('chute.width')).toBe('two foot');
    const fault = document.getElementById(input('chute.width').getAttribute('aria-describedby')?.split(' ')[0] ?? '');
    expect(fault?.textContent).toBe('"two foot" is the wrong kind of value; allowed is a length: a number of inches, or a text such as "12 ft", "10\'-6 1/2\\"", "3 1/2 in", "3500 mm", of 14 in to 40 in (355.6 mm to 1016 mm)');
    expect(input('chute.width').getAttribute('aria-invalid')).toBe('true');
    await window.type(input('chute.width'), '28');
    expect(input('chute.width').getAttribute('aria-invalid')).toBeNull();
    expect(row('chute.width').querySelector('.field-fault')).toBeNull();
  });

  test('too large for a number stays a text, so that nothing of it is lost', async () => {
    const figure = '9'.repeat(400);
    await window.type(input('chute.width'), figure);
    expect(window.value('chute.width')).toBe(figure);
    expect(row('chute.width').querySelector('.field-fault')?.textContent).toContain('allowed is a length');
  });

  test('is one step of undo from the first key to leaving the field', async () => {
    const before = window.steps();
    for (const text of ['3', '30', '30.', '30.5']) await window.type(input('chute.width'), text);
    expect(window.steps()).toBe(before + 1);
    await window.leave(input('chute.width'));
    await window.type(input('chute.width'), '31');
    expect(window.steps()).toBe(before + 2);
    await window.undo();
    expect(window.value('chute.width')).toBe(30.5);
    await window.undo();
    expect(window.value('chute.width')).toBe(28);
  });

  test('taken back elsewhere is taken back in the field', async () => {
    await window.type(input('chute.width'), '31');
    await window.undo();
    expect(input('chute.width').value).toBe('28');
  });
});

describe('a field that the file leaves out', () => {
  const least = put(put(sampleProject(), ['cattle', undefined]), ['fences.crowdPen.rails', 6]);
  beforeEach(() => open(least, 'cattle.weight', 'cattle.kind', 'fences.chute.left.rails', 'site.latitude', 'footings.load', 'fences.chute.left.sheet'));

  test('is empty, its default beside it in words of its own', () => {
    expect(input('cattle.weight').value).toBe('');
    expect(row('cattle.weight').querySelector('.standing')?.textContent).toBe('default: 1250 lb');
    expect(input('cattle.kind').value).toBe('');
    expect((input('cattle.kind') as unknown as HTMLSelectElement).selectedOptions[0]?.textContent).toBe('default: mature');
    expect(row('fences.chute.left.rails').querySelector('.standing')?.textContent).toBe('as the crowd pen\'s: 6');
  });

  test('once typed can be left to its default again, as a step of its own', async () => {
    await window.type(input('cattle.weight'), '900');
    expect(row('cattle.weight').querySelector('.standing')).toBeNull();
    await window.press(window.button('Leave to default: Weight'));
    expect(window.value('cattle.weight')).toBeUndefined();
    expect(row('cattle.weight').querySelector('.standing')?.textContent).toBe('default: 1250 lb');
    await window.undo();
    expect(window.value('cattle.weight')).toBe(900);
  });

  test('emptied is left to its default too', async () => {
    await window.type(input('cattle.weight'), '900');
    await window.type(input('cattle.weight'), '');
    expect(window.value('cattle.weight')).toBeUndefined();
  });

  test('is chosen, and chosen back', async () => {
    await window.type(input('cattle.kind'), '1');
    expect(window.value('cattle.kind')).toBe('yearling');
    await window.type(input('cattle.kind'), '');
    expect(window.value('cattle.kind')).toBeUndefined();
  });

  test('that may be none says none by a box: a sheet, a load', async () => {
    const box = row('fences.chute.left.sheet').querySelector('input[type=checkbox]') as HTMLInputElement;
    expect(box.checked).toBe(false);
    await window.press(box);
    expect(window.value('fences.chute.left.sheet')).toBeNull();
    await window.press(box);
    expect(window.value('fences.chute.left.sheet')).toBeUndefined();
  });
});

test('help says what the field is, what is allowed and how far the rule is to be trusted', async () => {
  await open(sampleProject(), 'crowdPen.radius');
  const why = window.button('Why: Radius to the face');
  expect(why.getAttribute('aria-expanded')).toBe('false');
  await window.press(why);
  const help = row('crowdPen.radius').querySelector('.field-help')?.textContent ?? '';
  expect(help).toContain('From the pivot post\'s center to the face of the outer fence.');
  expect(help).toContain('Allowed: a length such as 144, 12 ft, 10\'-6 1/2", 3 1/2 in, 3500 mm or 3.5 m; 72 in to 240 in (1828.8 mm to 6096 mm).');
  expect(help).toContain('Crowd pen radius to the face: 120 to 144 in (from memory, no source: a default to be changed)');
  expect(why.getAttribute('aria-expanded')).toBe('true');
  expect(input('crowdPen.radius').getAttribute('aria-describedby')).toContain('-help');
});

test('a value that is none of the choices is shown as what it is', async () => {
  await open(put(sampleProject(), ['crowdPen.hand', 'lefty']), 'crowdPen.hand');
  expect((input('crowdPen.hand') as unknown as HTMLSelectElement).selectedOptions[0]?.textContent).toBe('"lefty" (not allowed)');
  expect(row('crowdPen.hand').querySelector('.field-fault')?.textContent).toContain('"lefty" is not one of the choices; allowed is left, right');
});

test('a field that is asked for has no way back to a default, and says that it is asked for once it is empty', async () => {
  await open(sampleProject(), 'title');
  expect(row('title').querySelector('button')?.textContent).toBe('Why');
  await window.type(input('title'), '');
  expect(row('title').textContent).toContain('asked for');
  expect(row('title').querySelector('.field-fault')?.textContent).toContain('asked for and missing');
});
