import { describe, expect, it } from 'vitest';
import { readBrief } from '../../../core/brief/index.ts';
import { isJsonObject, type JsonObject } from '../../../core/brief/json/types.ts';
import { EXAMPLES } from './examples.ts';
import { addRun, moveRun, removeRun, replaceRun, runsOf } from '../../../renderer/places/lay-out/edits/run-list.ts';
import { asArc, asStraight, firstStraight } from '../../../renderer/places/lay-out/edits/run-shapes.ts';
import { runName, runPath, runPlace } from '../../../renderer/places/lay-out/edits/run-place.ts';
import { type StationRun } from '../../../core/schedules/index.ts';

const straight = (length: number): JsonObject => ({ kind: 'straight', length });
const project: JsonObject = {
  chute: { width: 28, runs: [straight(100), straight(200), straight(300)] },
  openings: [{ kind: 'man-gate', run: 'chute-2', at: 50 }, { kind: 'man-gate', run: 'crowd-pen', at: 60 }, { kind: 'backstop', run: 'chute', at: 96 }],
  catwalks: [{ run: 'chute-3', side: 'left', to: 100 }],
};
const lengths = (of: JsonObject, part: 'alley' | 'chute' = 'chute'): unknown[] => runsOf(of, part).map((run) => (isJsonObject(run) ? run['length'] : null));
const where = (of: JsonObject, list: string): unknown[] => (of[list] as JsonObject[]).map((item) => item['run']);
const chute = (index: number) => ({ part: 'chute', index }) as const;

const arc: StationRun = {
  run: 'chute-2', kind: 'arc', from: 120, length: (206 * Math.PI) / 2, insideRadius: 192, centerlineRadius: 206, angleDeg: 90, hand: 'right',
  start: [0, 0], end: [0, 0], headingStartDeg: 90, headingEndDeg: 0,
};

describe('runs of a project', () => {
  it('are named in walking order', () => {
    expect(runPlace('chute-2')).toEqual(chute(1));
    expect(runPath(chute(1))).toBe('chute.runs[1]');
    expect(runName({ part: 'alley', index: 0 })).toBe('alley-1');
    expect([runPlace('crowd-pen'), runPlace('junction'), runPlace('sort-1'), runPlace('chute')]).toEqual([null, null, null, null]);
  });

  it('take what stands on them along when one is put in before', () => {
    const next = addRun(project, chute(1), straight(50));
    expect(lengths(next)).toEqual([100, 50, 200, 300]);
    expect(where(next, 'openings')).toEqual(['chute-3', 'crowd-pen', 'chute']);
    expect(where(next, 'catwalks')).toEqual(['chute-4']);
    expect(lengths(project)).toEqual([100, 200, 300]);
  });

  it('go with what stands on them when they are taken out, and nothing else does', () => {
    const next = removeRun(project, chute(1));
    expect(lengths(next)).toEqual([100, 300]);
    expect(where(next, 'openings')).toEqual(['crowd-pen', 'chute']);
    expect(where(next, 'catwalks')).toEqual(['chute-2']);
  });

  it('never lose the last', () => {
    const one: JsonObject = { chute: { runs: [straight(100)] } };
    expect(removeRun(one, chute(0))).toBe(one);
  });

  it('change places with what stands on each', () => {
    const next = moveRun(project, chute(2), -1);
    expect(lengths(next)).toEqual([100, 300, 200]);
    expect(where(next, 'openings')).toEqual(['chute-3', 'crowd-pen', 'chute']);
    expect(where(next, 'catwalks')).toEqual(['chute-2']);
    expect(moveRun(project, chute(2), 1)).toBe(project);
    expect(moveRun(project, chute(0), -1)).toBe(project);
  });

  it('of an alley left to its default are said whole before one is changed', () => {
    expect(lengths({}, 'alley')).toEqual(['20 ft']);
    expect(lengths(addRun({}, { part: 'alley', index: 1 }, straight(50)), 'alley')).toEqual(['20 ft', 50]);
  });

  it('become arcs about as long as they were, and straights again', () => {
    const made = asArc({ ...arc, length: 206 * 1.2, kind: 'straight' }, 28, 'in', [{ kind: 'arc', hand: 'right' }]);
    // 1.2 radians are 68.75 degrees.
    expect(made).toEqual({ kind: 'arc', insideRadius: 192, angle: 69, hand: 'left' });
    expect(asStraight(arc, 'in')).toEqual({ kind: 'straight', length: 324 });
    expect(asStraight(arc, 'mm')).toEqual({ kind: 'straight', length: '8220 mm' });
    expect(asStraight({ ...arc, length: 5 }, 'in')).toEqual({ kind: 'straight', length: 12 });
  });

  it('of the examples are still a project that can be read after every change', () => {
    for (const { json } of EXAMPLES) {
      const count = runsOf(json, 'chute').length;
      for (let i = 0; i < count; i += 1) {
        for (const next of [
          addRun(json, chute(i), firstStraight('mm')), removeRun(json, chute(i)), moveRun(json, chute(i), 1), replaceRun(json, chute(i), asArc(arc, 28, 'mm', [])),
          replaceRun(json, chute(i), asStraight(arc, 'in')),
        ]) expect(readBrief(JSON.stringify(next))).toMatchObject({ ok: true });
      }
    }
  });
});
