import { describe, expect, test } from 'vitest';
import { printFault, readBrief, type Brief } from '../../core/brief/index.ts';
import { isCalendarDate } from '../../core/brief/schema/calendar-date.ts';
import { changed, leastProject, type Change } from '../support/change-project.ts';

function briefOf(...changes: readonly Change[]): Brief {
  const result = readBrief(changed(leastProject(), ...changes));
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.brief;
}

test('a line break folds to one space, whatever its kind', () => {
  for (const line of ['\n', '\r', '\r\n', '\u2028', '\u2029']) expect(briefOf(['title', `Juniper${line}Flat`]).title).toBe('Juniper Flat');
});

test('a person\'s text stays as it is', () => {
  for (const title of ['<b>&"\'', '%%c ^J \\U+0041', '=1+2', '牧場', '👩‍🌾 farm', 'é']) {
    expect(briefOf(['title', title], ['client', title], ['control.note', title])).toMatchObject({ title, client: title, control: { note: title } });
  }
});

/** Independent of the code: JavaScript's own calendar. */
test('a date is a day of the calendar', () => {
  for (let year = 1999; year <= 2105; year += 1) {
    for (const day of ['01-31', '02-28', '02-29', '02-30', '04-30', '04-31', '12-31', '13-01', '00-10', '06-00']) {
      const text = `${String(year)}-${day}`;
      const date = new Date(`${text}T00:00:00Z`);
      const real = !Number.isNaN(date.getTime()) && date.toISOString().startsWith(text);
      expect(isCalendarDate(text), text).toBe(real);
    }
  }
  for (const text of ['', '2026-3-2', '2026-03-02T00:00', ' 2026-03-02', '20260302', '٢٠٢٦-03-02']) expect(isCalendarDate(text)).toBe(false);
});

describe('sections', () => {
  test('are one under any spelling: stock and rolls are found for the name that the fences use', () => {
    const brief = briefOf(['fences.crowdPen', { rail: 'Tubing 2 3/8  X .190', post: 'PIPE 3 SCH 40' }], ['shop', {
      stock: { 'tubing 2.375 x 0.19': ['31 ft', '20 ft', '20 ft'], 'pipe 3 sch. 40': [252] }, roll: { 'tubing 2 3/8 x 0.19': { radius: 80, length: '3 ft' } },
    }]);
    expect(brief.fences.crowdPen.rail.name).toBe('tubing 2 3/8 x 0.190');
    expect(brief.shop.stock['tubing 2 3/8 x 0.190']).toEqual([240, 372]);
    expect(brief.shop.stock['pipe 3 sch 40']).toEqual([252]);
    expect(brief.shop.roll['tubing 2 3/8 x 0.190']).toEqual({ radius: 80, length: 36 });
  });

  test('of the shop\'s own are used by their names: round, with corners, or as a text of sizes', () => {
    const brief = briefOf(['shop.sections', { 'Used 2 7/8': { outside: 2.84, wall: 0.2 }, frame: { outside: ['50 mm', '100 mm'], wall: '4 mm' }, stub: '4.46 x 0.22' }],
      ['fences.crowdPen', { rail: 'frame', post: 'used 2 7/8' }], ['crowdPen.pivotPost', 'STUB']);
    expect(brief.fences.crowdPen.post).toMatchObject({ name: 'used 2 7/8', shape: 'round', across: 2.84, wall: 0.2 });
    expect(brief.fences.crowdPen.rail).toMatchObject({ name: 'frame', shape: 'rectangular' });
    expect([brief.fences.crowdPen.rail.across * 25.4, brief.fences.crowdPen.rail.along * 25.4]).toEqual([50, 100]);
    expect(brief.crowdPen.pivotPost).toMatchObject({ name: 'stub', across: 4.46 });
  });

  test('a faulty one of the shop\'s own is told once, not again at each fence that uses it', () => {
    const result = readBrief(changed(leastProject(), ['shop.sections', { mine: { outside: 'thick', wall: 1 } }], ['fences.crowdPen.rail', 'mine']));
    expect(result.ok ? [] : result.faults.map(({ path }) => path)).toEqual(['shop.sections.mine']);
  });
});

test('marks that were issued are kept as they are', () => {
  const marks = { 'rail|pipe 2 sch 40|251.8750': 'R1', 'post|pipe 3 sch 40|96': 'P-12', 'constructor': 'Z9' };
  expect(briefOf(['marks', marks]).marks).toEqual(marks);
});

test('a load that a person gives comes through in pounds, at its height', () => {
  expect(briefOf(['footings', { load: '100 kg', loadHeight: '1 m' }]).postLoad).toEqual({ load: 100 / 0.45359237, height: 10000 / 254, heldAtSurface: false });
});

test('no name or value of a file reaches the words of a fault with a control character or half a character', () => {
  const odd = ['\u0007', '\u009b31m', '\u2028', '\ud800', '🐂'.repeat(80), `${'x'.repeat(59)}🐂🐂`];
  for (const text of odd) {
    const result = readBrief(changed(leastProject(), ['units', text], ['marks', { [text]: text }], ['shop.stock', { [text]: [text] }], ['title', text.repeat(70)]));
    if (result.ok) throw new Error('read');
    for (const fault of result.faults) {
      const words = printFault(fault);
      expect(words).not.toMatch(/[\u0000-\u001f\u007f-\u009f\u2028\u2029]/);
      // Half a character would come back from UTF-8 as another one.
      expect(new TextDecoder().decode(new TextEncoder().encode(words))).toBe(words);
      expect(words.length).toBeLessThan(600);
    }
  }
});
