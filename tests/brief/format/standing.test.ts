import { describe, expect, test } from 'vitest';
import { FORMAT, fieldAt, standingAt } from '../../../core/brief/format/index.ts';
import { readBrief } from '../../../core/brief/index.ts';
import { type JsonObject } from '../../../core/brief/json/types.ts';
import { changed, leastProject, put, type Change } from '../../support/change-project.ts';
import { stepsOf } from '../../support/path-steps.ts';

/** Everything that a project may hold, each thing saying only what it must. */
const EVERYTHING: readonly Change[] = [
  ['openings', [{ kind: 'man-gate', run: 'chute', side: 'left', at: 60 }, { kind: 'backstop', run: 'chute', at: 96 }]],
  ['catwalks', [{ run: 'chute', side: 'left', to: 60 }]],
  ['ramps', [{ kind: 'load' }, { kind: 'unload' }, { kind: 'load', surface: 'cleated' }, { kind: 'unload', surface: 'stepped' }]],
  ['squeezePad', { roof: {} }],
  ['sortPens', [{ side: 'left' }]],
  ['holdingPens', [{ head: 60 }]],
];
const METRIC: readonly Change[] = [['units', 'mm']];
const ROOFLESS: readonly Change[] = [['squeezePad', {}]];
const LOWER: readonly Change[] = [['fences.chute', { height: 54, left: { rails: 4 } }], ['fences.alley', { height: '1500 mm' }]];

/** The defaults that the report of a project lists, each as the description has it. */
function compared(changes: readonly Change[]): { readonly listed: readonly string[]; readonly described: readonly string[] } {
  const project = changes.reduce(put, leastProject());
  const read = readBrief(JSON.stringify(project));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return {
    listed: read.defaults.map(({ path, value }) => `${path}: ${value}`),
    described: read.defaults.map(({ path }) => `${path}: ${standingAt(stepsOf(path), project as JsonObject)?.words ?? '-'}`),
  };
}

describe('what holds where a project says nothing', () => {
  test.each([
    ['the least project', []], ['everything in it', EVERYTHING], ['in millimeters', [...EVERYTHING, ...METRIC]],
    ['a pad without a roof', ROOFLESS], ['fences of several heights', [...METRIC, ...LOWER]],
  ] as const)('is what the report lists: %s', (_, changes) => {
    const { listed, described } = compared(changes);
    expect(listed.length).toBeGreaterThan(40);
    expect(described).toEqual(listed);
  });

  test('is told for every field that may be left out, and for none that is asked for', () => {
    const project = EVERYTHING.reduce(put, leastProject()) as JsonObject;
    const path = (pattern: string) => stepsOf(pattern.replaceAll('[]', '[0]').replaceAll('[*]', '["pipe 2 sch 40"]'));
    const leaves = FORMAT.filter(({ what }) => what.kind !== 'group');
    const silent = leaves.filter(({ pattern, asked }) => asked === 'never' && standingAt(path(pattern), project) === null);
    expect(silent.map(({ pattern }) => pattern)).toEqual([]);
    const asked = leaves.filter(({ pattern, asked }) => asked !== 'never' && pattern !== 'shop.stock[*]' && standingAt(path(pattern), project) !== null);
    expect(asked.map(({ pattern }) => pattern)).toEqual([]);
  });

  test('written out in the file it makes the same brief', () => {
    const project = EVERYTHING.reduce(put, leastProject());
    const before = readBrief(JSON.stringify(project));
    if (!before.ok) throw new Error('refused');
    const written = before.defaults.flatMap(({ path }): Change[] => {
      const value = standingAt(stepsOf(path), project as JsonObject)?.value;
      // A roof's open sides are listed as words, and written as a list.
      return value === undefined || path.includes('"') || path.endsWith('.open') ? [] : [[path, value]];
    });
    expect(written.length).toBeGreaterThan(40);
    const after = readBrief(changed(JSON.parse(JSON.stringify(project)) as Record<string, unknown>, ...written));
    if (!after.ok) throw new Error(JSON.stringify(after.faults));
    expect(after.brief).toEqual(before.brief);
    expect(after.defaults.filter(({ path }) => written.some(([said]) => said === path))).toEqual([]);
  });
});

describe('a fence takes what it does not say from the one around it', () => {
  const project = { ...leastProject(), fences: {
    crowdPen: { rail: 'pipe 2 sch 40', post: 'pipe 2 1/2 sch 40', rails: 6, height: '6 ft' }, chute: { height: 54, left: { solidTo: 40 } } } } as unknown as JsonObject;
  const at = (path: string) => standingAt(stepsOf(path), project);

  test('a side from its place, a place from the crowd pen, and it says from which', () => {
    expect(at('fences.chute.left.height')).toEqual({ words: '4\'-6"', from: ['fences', 'chute'], value: 54 });
    expect(at('fences.chute.left.rails')).toEqual({ words: '6', from: ['fences', 'crowdPen'], value: 6 });
    expect(at('fences.chute.height')).toEqual({ words: '6\'-0"', from: ['fences', 'crowdPen'], value: '6 ft' });
    expect(at('fences.alley.right.rail')).toEqual({ words: 'pipe 2 sch 40', from: ['fences', 'crowdPen'], value: 'pipe 2 sch 40' });
  });

  test('and where none says it the default holds, a solid height its own fence\'s', () => {
    expect(at('fences.chute.left.postSpacing')).toEqual({ words: '8\'-0"', from: null, value: 96 });
    expect(at('fences.chute.right.solidTo')?.words).toBe('its height, 4\'-6"');
    expect(at('fences.alley.solidTo')?.words).toBe('its height, 6\'-0"');
  });
});

test('a place that the format has not has nothing', () => {
  expect(fieldAt(stepsOf('crowdPen.radios'))).toBeNull();
  expect(fieldAt(stepsOf('chute.runs.length'))).toBeNull();
  expect(fieldAt(['toString'])).toBeNull();
  expect(standingAt(stepsOf('crowdPen.radios'), {})).toBeNull();
});
