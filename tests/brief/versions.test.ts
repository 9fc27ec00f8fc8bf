import { describe, expect, test } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { bringForward, CURRENT_VERSION, STEPS, type VersionStep } from '../../core/brief/versions/bring-forward.ts';
import { type JsonObject } from '../../core/brief/json/types.ts';
import { frozenText } from '../support/change-project.ts';

describe('an older project is brought forward', () => {
  // Two steps made up for this test: a field renamed, then one added.
  const rename: VersionStep = ({ old, ...rest }) => ({ ...rest, new: old ?? null, version: 2 });
  const extend: VersionStep = (project) => ({ ...project, added: true, version: 3 });
  const steps = [rename, extend];

  test('step by step from where it stands', () => {
    expect(bringForward({ version: 1, old: 5 }, 1, steps)).toEqual({ version: 3, new: 5, added: true });
    expect(bringForward({ version: 2, new: 5 }, 2, steps)).toEqual({ version: 3, new: 5, added: true });
    expect(bringForward({ version: 3, new: 5 }, 3, steps)).toEqual({ version: 3, new: 5 });
  });

  test('and left as it was itself', () => {
    const project: JsonObject = Object.freeze({ version: 1, old: 5 });
    bringForward(project, 1, steps);
    expect(project).toEqual({ version: 1, old: 5 });
  });

  test('a version that there is not is a programmer\'s mistake', () => {
    for (const version of [0, 4, 1.5, NaN]) expect(() => bringForward({}, version, steps)).toThrow(String(version));
  });
});

test('there is one frozen example for each version that is read', () => {
  expect(CURRENT_VERSION).toBe(STEPS.length + 1);
  // A second version comes with frozen/v2.penwright.json and its own line here.
  expect(CURRENT_VERSION).toBe(1);
});

test('version 1, as it was agreed, is read whole', () => {
  expect(readBrief(frozenText()).ok).toBe(true);
});

test('a newer version is refused with nothing else said of it', () => {
  const newer = JSON.stringify({ format: 'penwright-project', version: 2, title: 7, unheard: true });
  const result = readBrief(newer);
  expect(result.ok ? [] : result.faults).toEqual([{ path: 'version', code: 'fault.version-newer', params: { value: 2, greatest: 1 } }]);
});
