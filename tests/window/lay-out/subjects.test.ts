import { describe, expect, it } from 'vitest';
import { fieldAt } from '../../../core/brief/format/index.ts';
import { readBrief } from '../../../core/brief/index.ts';
import { type JsonObject } from '../../../core/brief/json/types.ts';
import { type StationRun } from '../../../core/schedules/index.ts';
import { pathSteps } from '../../../renderer/project/json-path.ts';
import { runPaths } from '../../../renderer/places/lay-out/edits/run-paths.ts';
import { standsOn } from '../../../renderer/places/lay-out/edits/stands-on.ts';
import { addRamp, addSubject, subjectsFor } from '../../../renderer/places/lay-out/edits/subjects.ts';
import { directWork } from '../support/opened.ts';
import { EXAMPLES } from './examples.ts';

async function runsOfExample(json: JsonObject): Promise<readonly StationRun[]> {
  const { laid } = await directWork().ask('lay', { text: JSON.stringify(json), board: null });
  if (laid === null) throw new Error('an example that can\'t be laid out');
  return laid.stations.runs;
}

const run = (name: string, from: number | null, length: number): StationRun => ({
  run: name, kind: 'straight', from, length, insideRadius: null, centerlineRadius: null, angleDeg: null, hand: null, start: [0, 0], end: [0, 0], headingStartDeg: 90, headingEndDeg: 90,
});

describe('what stands on a run', () => {
  const project: JsonObject = {
    openings: [{ kind: 'backstop', run: 'chute', at: '8 ft' }, { kind: 'man-gate', run: 'chute-2', at: 20 }, { kind: 'man-gate', run: 'crowd-pen', at: '15 ft' }],
    catwalks: [{ run: 'chute', side: 'left', from: 0, to: '25 ft' }],
  };
  const on = (of: StationRun): string[] => standsOn(project, of).map(({ list, index }) => `${list}[${String(index)}]`);

  it('is found by its run\'s name, and on the chute by its station', () => {
    expect(on(run('chute-1', 0, 120))).toEqual(['openings[0]', 'catwalks[0]']);
    expect(on(run('chute-2', 120, 150))).toEqual(['openings[1]', 'catwalks[0]']);
    expect(on(run('chute-3', 301, 60))).toEqual([]);
    expect(on(run('crowd-pen', null, 450))).toEqual(['openings[2]']);
  });

  it('makes a project that can be read, whatever is added to whichever run of the examples', async () => {
    for (const { json } of EXAMPLES) {
      for (const one of await runsOfExample(json)) {
        for (const subject of subjectsFor(one)) {
          const next = addSubject(json, subject, one, json['units'] === 'mm' ? 'mm' : 'in');
          const read = readBrief(JSON.stringify(next));
          expect(read).toMatchObject({ ok: true });
          const before = standsOn(json, one).length;
          expect(standsOn(next, one).length).toBe(before + 1);
        }
      }
    }
  });

  it('goes for ramps too', () => {
    for (const kind of ['load', 'unload'] as const) expect(readBrief(JSON.stringify(addRamp(EXAMPLES[0]?.json ?? {}, kind)))).toMatchObject({ ok: true });
  });
});

describe('the fields of a run', () => {
  it('are those of its kind, and once each', () => {
    const json = EXAMPLES.find(({ name }) => name.startsWith('juniper'))?.json ?? {};
    expect(runPaths(json, 'chute-1', [])).toEqual(['chute.runs[0].length', 'chute.width']);
    expect(runPaths(json, 'chute-2', [])).toEqual(['chute.runs[1].insideRadius', 'chute.runs[1].angle', 'chute.runs[1].hand', 'chute.width']);
    expect(runPaths(json, 'junction', [])).toEqual(['crowdPen.funnelAngle', 'chute.width']);
    expect(runPaths(json, 'unload-1', [])).toContain('ramps[1].slope');
    expect(runPaths({}, 'alley-1', [])).toEqual(['alley.runs[0].length']);
  });

  it('are fields of the project format, of every run of the examples and of what stands beside it', async () => {
    let count = 0;
    for (const { json } of EXAMPLES) {
      const { laid } = await directWork().ask('lay', { text: JSON.stringify(json), board: null });
      for (const name of [...(laid?.stations.runs ?? []).map((one) => one.run), 'squeeze-pad', 'sort-1', 'load-1', 'unload-1']) {
        for (const path of runPaths(json, name, laid?.handles ?? [])) {
          count += 1;
          expect([path, fieldAt(pathSteps(path)) === null]).toEqual([path, false]);
        }
      }
    }
    expect(count).toBeGreaterThan(60);
  });
});
