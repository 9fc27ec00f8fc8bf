import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { FORMAT, fieldAt, type Field } from '../../../core/brief/format/index.ts';
import { RANGES, readBrief } from '../../../core/brief/index.ts';
import { project } from '../../../core/brief/schema/project.ts';
import { sampleProject } from '../../support/change-project.ts';
import { stepsOf } from '../../support/path-steps.ts';

type Shape = Readonly<Record<string, unknown>>;
const isShape = (value: unknown): value is Shape => typeof value === 'object' && value !== null && !Array.isArray(value);

/** Every place of a JSON Schema, as patterns: the library's own writing of the schema at the door, walked without our describing. */
function places(schema: unknown, at: string): readonly string[] {
  if (!isShape(schema)) return [];
  const own = at === '' ? [] : [at];
  const inner = (name: string): string => (at === '' ? name : `${at}.${name}`);
  const named = isShape(schema['properties']) ? Object.entries(schema['properties']).flatMap(([name, part]) => places(part, inner(name))) : [];
  const listed = 'items' in schema ? places(schema['items'], `${at}[]`) : [];
  const anyName = isShape(schema['additionalProperties']) ? places(schema['additionalProperties'], `${at}[*]`) : [];
  const some = ['anyOf', 'oneOf'].flatMap((key) => (Array.isArray(schema[key]) ? (schema[key] as unknown[]).flatMap((part) => places(part, at)) : []));
  return [...new Set([...own, ...named, ...listed, ...anyName, ...some])];
}

/** Every place that a project fills, with its path. */
function filled(value: unknown, path: readonly (string | number)[]): readonly (readonly (string | number)[])[] {
  const below = Array.isArray(value)
    ? value.flatMap((entry: unknown, index) => filled(entry, [...path, index]))
    : isShape(value) ? Object.entries(value).flatMap(([name, entry]) => filled(entry, [...path, name])) : [];
  return path.length === 0 ? below : [path, ...below];
}

describe('the description of the project file', () => {
  const patterns = FORMAT.map(({ pattern }) => pattern);

  test('has every place of the schema at the door, and no other', () => {
    const schema = places(z.toJSONSchema(project, { io: 'input', unrepresentable: 'any' }), '');
    expect(schema.length).toBeGreaterThan(300);
    expect(schema.filter((pattern) => !patterns.includes(pattern))).toEqual([]);
    expect(patterns.filter((pattern) => !schema.includes(pattern))).toEqual([]);
    expect(new Set(patterns).size).toBe(patterns.length);
  });

  test('has every place that the contract\'s example fills', () => {
    const paths = filled(sampleProject(), []);
    expect(paths.length).toBeGreaterThan(150);
    expect(paths.filter((path) => fieldAt(path) === null)).toEqual([]);
  });

  test('names in each group the fields that the door names to who writes another', () => {
    const groups = FORMAT.filter(({ what, pattern }) => what.kind === 'group' && !/[[]/.test(pattern));
    expect(groups.length).toBeGreaterThan(20);
    for (const { pattern, what } of groups) {
      const text = JSON.stringify({ format: 'penwright-project', version: 1, ...stepsOf(pattern).reduceRight<object>((inner, step) => ({ [step]: inner }), { zzz: 1 }) });
      const read = readBrief(text);
      const fault = read.ok ? undefined : read.faults.find(({ code }) => code === 'fault.unknown');
      expect([pattern, String(fault?.params['allowed']).split(', ')]).toEqual([pattern, what.kind === 'group' ? Object.keys(what.fields) : []]);
    }
  });

  test('says of the contract\'s fields what the contract says that they are', () => {
    const kindOf = (path: string): string => fieldAt(stepsOf(path))?.what.kind ?? '';
    expect(Object.fromEntries(['title', 'crowdPen.radius', 'crowdPen.sweep', 'cattle.weight', 'cattle.flighty', 'fences.chute.left.rails', 'shop.springback',
      'revision.date', 'site.work.from', 'site.timeZone', 'crowdPen.pivotPost', 'fences.crowdPen.sheet', 'shop.stock', 'shop.sheets', 'openings', 'units'].map((path) => [path, kindOf(path)])))
      .toEqual({
        title: 'text', 'crowdPen.radius': 'length', 'crowdPen.sweep': 'angle', 'cattle.weight': 'weight', 'cattle.flighty': 'flag', 'fences.chute.left.rails': 'whole',
        'shop.springback': 'number', 'revision.date': 'date', 'site.work.from': 'time', 'site.timeZone': 'zone', 'crowdPen.pivotPost': 'section',
        'fences.crowdPen.sheet': 'sheet', 'shop.stock': 'named', 'shop.sheets': 'list', openings: 'list', units: 'choice',
      });
  });

  test('asks for what the contract asks for', () => {
    const asked = FORMAT.filter((field) => field.asked === 'always').map(({ pattern }) => pattern);
    // The project contract: title, crowdPen.radius, chute.width and chute.runs, and fences.crowdPen with its sections.
    expect(asked.toSorted()).toEqual(['chute.runs', 'chute.width', 'crowdPen.radius', 'fences.crowdPen.post', 'fences.crowdPen.rail', 'format', 'title', 'version']);
  });
});

/** A project in which every list has an entry and every group is there, so that each field has a place to stand. */
function fullProject(): Record<string, unknown> {
  const sample = sampleProject() as Record<string, Record<string, unknown>>;
  const fence = { left: {}, right: {} };
  return {
    ...sample,
    fences: { ...sample['fences'], alley: fence, junction: fence, chute: fence, ramp: fence, pad: fence, pens: fence },
    shop: { ...sample['shop'], roll: { 'pipe 2 sch 40': { radius: 60, length: 40 } }, rack: { 'pipe 2 sch 40': [{ length: 120, count: 3, price: 9 }] }, prices: { a: 1 }, sections: { used: '2.36 x 0.17' } },
    control: { b: [240, 0], c: [0, 300] },
    ramps: [{ kind: 'load', at: [900, 900], heading: 0 }],
    returnAlley: {
      from: { run: 'chute', side: 'left', at: 60 }, width: 36,
      runs: [{ kind: 'straight', length: 240 }, { kind: 'arc', insideRadius: 100, angle: 90, hand: 'left' }],
    },
    revisions: [{ letter: 'A', date: '2026-01-05', note: '' }],
    marks: { signature: 'R1' },
  };
}

const NAMES: Readonly<Record<string, string>> = { 'shop.stock': 'pipe 2 sch 40', 'shop.roll': 'pipe 2 sch 40', 'shop.rack': 'pipe 2 sch 40', 'shop.prices': 'a', 'shop.sections': 'used', marks: 'signature' };

/** A place of the full project for a pattern; runs by whichever of them has the field. */
function placeOf(pattern: string): string {
  const arc = /\.runs\[\]\.(insideRadius|angle|hand)$/.test(pattern);
  return pattern.replaceAll(/\[\*\]/g, (_, at: number) => `["${NAMES[pattern.slice(0, at)] ?? ''}"]`).replaceAll('[]', arc ? '[1]' : '[0]');
}

function putAt(value: unknown, steps: readonly (string | number)[], leaf: unknown): unknown {
  const [step, ...rest] = steps;
  if (step === undefined) return leaf;
  if (typeof step === 'number') {
    const list: unknown[] = Array.isArray(value) ? [...(value as unknown[])] : [];
    list[step] = putAt(list[step], rest, leaf);
    return list;
  }
  const group = isShape(value) ? value : {};
  return { ...group, [step]: putAt(group[step], rest, leaf) };
}

/** What the door says of one value at a place of the full project: the codes of the faults there. */
function door(path: string, value: unknown): readonly string[] {
  const around = path.startsWith('alley.runs[1]')
    ? putAt(fullProject(), ['alley', 'runs'], [{ kind: 'straight', length: 240 }, { kind: 'arc', insideRadius: 192, angle: 90, hand: 'left' }]) : fullProject();
  const read = readBrief(JSON.stringify(putAt(around, stepsOf(path), value)));
  return read.ok ? [] : read.faults.filter((fault) => JSON.stringify(stepsOf(fault.path)) === JSON.stringify(stepsOf(path))).map(({ code }) => code);
}

/** Faults of one value alone; those that hold fields against each other may stand at the same place. */
const ALONE = ['fault.range', 'fault.type', 'fault.whole', 'fault.count', 'fault.characters', 'fault.choice', 'fault.pattern', 'fault.missing'];
const alone = (path: string, value: unknown): readonly string[] => door(path, value).filter((code) => ALONE.includes(code));

const withRange = FORMAT.filter(({ what }) => 'range' in what);
const text = (length: number): string => 'x'.repeat(length);

describe('each range is the table\'s and the door\'s', () => {
  test('it is one of the table of ranges, or a plain count of characters', () => {
    expect(withRange.length).toBeGreaterThan(100);
    const table: readonly unknown[] = Object.values(RANGES);
    const stray = withRange.filter(({ what }) => 'range' in what && !table.includes(what.range));
    expect(stray.map(({ pattern }) => pattern).toSorted()).toEqual(['catwalks[].run', 'openings[].run', 'returnAlley.from.run']);
  });

  test.each(withRange.map((field) => [field.pattern, field] as const))('%s: both ends are taken, just outside is refused at its path', (pattern, { what }: Field) => {
    if (!('range' in what)) throw new Error(`no range: ${pattern}`);
    const { least, greatest } = what.range;
    const path = placeOf(pattern);
    if (what.kind === 'text') {
      expect(alone(path, text(Math.max(least, 1)))).toEqual([]);
      expect(alone(path, text(greatest))).toEqual([]);
      expect(alone(path, text(greatest + 1))).toEqual(['fault.characters']);
      expect(alone(path, '')).toEqual(least > 0 ? ['fault.characters'] : []);
      return;
    }
    const step = what.kind === 'whole' ? 1 : 1e-6;
    expect([least, greatest].map((value) => alone(path, value))).toEqual([[], []]);
    expect([least - step, greatest + step].map((value) => alone(path, value))).toEqual([['fault.range'], ['fault.range']]);
  });

  test.each(FORMAT.filter(({ what }) => what.kind === 'list').map((field) => [field.pattern, field] as const))('%s: as many entries as it takes, no fewer and no more', (pattern, { what }) => {
    if (what.kind !== 'list') throw new Error(`no list: ${pattern}`);
    const path = placeOf(pattern);
    const { least, greatest } = what;
    const entry = stepsOf(`${path}[0]`).reduce<unknown>((value, step) => (value as Record<string | number, unknown>)[step], fullProject());
    const many = (count: number): unknown[] => Array.from({ length: count }, () => entry);
    expect(alone(path, many(least))).toEqual([]);
    expect(alone(path, many(greatest))).toEqual([]);
    expect(alone(path, many(greatest + 1))).toEqual(['fault.count']);
    if (least > 0) expect(alone(path, many(least - 1))).toEqual(['fault.count']);
  });
});

test.each(FORMAT.filter(({ what }) => what.kind === 'choice').map((field) => [field.pattern, field] as const))('%s: each choice is taken, another word is not', (pattern, { what }) => {
  if (what.kind !== 'choice') throw new Error(`no choice: ${pattern}`);
  const path = placeOf(pattern);
  expect(what.choices.map((choice) => alone(path, choice))).toEqual(what.choices.map(() => []));
  expect(alone(path, 'zzz')).toEqual(['fault.choice']);
});

test('null is taken where the description says so, and nowhere else', () => {
  const leaves = FORMAT.filter(({ what }) => !['group', 'forms', 'list', 'named', 'fixed'].includes(what.kind));
  const taken = leaves.filter(({ pattern }) => alone(placeOf(pattern), null).length === 0).map(({ pattern }) => pattern);
  expect(taken).toEqual(leaves.filter(({ nullable }) => nullable).map(({ pattern }) => pattern));
  expect(taken).toContain('footings.load');
});

test('what is asked for where its group is given is missed by the door, and nothing else is', () => {
  const leaves = FORMAT.filter(({ pattern, what }) => !pattern.endsWith(']') && what.kind !== 'fixed');
  const missed = leaves.filter(({ pattern }) => alone(placeOf(pattern), undefined).includes('fault.missing') || door(placeOf(pattern), undefined).includes('fault.missing'));
  // A fence's sections come from the one around it; the crowd pen's are asked for. A man gate has a side, which the rules of entries ask for.
  const byRule = ['openings[].side'];
  expect(missed.map(({ pattern }) => pattern).filter((pattern) => !byRule.includes(pattern)).toSorted())
    .toEqual(leaves.filter(({ asked }) => asked !== 'never').map(({ pattern }) => pattern).toSorted());
});
