import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';

const FOLDER = new URL('../../shared/examples/', import.meta.url);
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.penwright.json'));

test('there are three examples: inches with hand left, metric with hand right, a tight curve', () => {
  expect(files).toEqual(expect.arrayContaining(['juniper-flat.penwright.json', 'kalgara-yard.penwright.json', 'tight-curve.penwright.json']));
});

test.each(files)('%s is read without a fault', (name) => {
  const result = readBrief(readFileSync(new URL(name, FOLDER), 'utf8'));
  expect(result.ok ? [] : result.faults).toEqual([]);
});

test('the metric one is metric throughout', () => {
  const result = readBrief(readFileSync(new URL('kalgara-yard.penwright.json', FOLDER), 'utf8'));
  if (!result.ok) throw new Error('refused');
  expect(result.brief).toMatchObject({ units: 'mm', paper: 'ISO A3', crowdPen: { hand: 'right' } });
  expect(result.brief.crowdPen.radius * 25.4).toBeCloseTo(3500, 9);
  expect(result.brief.fences.crowdPen.height * 25.4).toBeCloseTo(1800, 9);
});
