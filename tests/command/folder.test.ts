import { mkdir, readdir, readFile, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readManifest } from '../../core/package/index.ts';
import { nodeDisk, sha256 } from '../../electron/disk/index.ts';
import { readTree } from '../../electron/disk/tree.ts';
import { refusingDisk } from '../disk/support/failing-disk.ts';
import { snapshot } from '../disk/support/packages.ts';
import { exampleProject, PART, put, run, SCHEDULES, withProject, WORDS } from './support/run.ts';

const project = await exampleProject();

describe('the folder that is written', () => {
  it('holds what its manifest lists, byte for byte, and nothing else', () =>
    withProject(project, async (home) => {
      const outcome = await run(home, WORDS);
      expect(outcome).toMatchObject({ code: 0, err: [] });
      const manifest = readManifest(await readFile(join(home, 'out', 'manifest.json'), 'utf8'));
      if (manifest === null) throw new Error('no manifest');
      expect(manifest).toMatchObject({ project: 'Juniper Flat', revision: 'A', date: '2026-03-02', units: 'in' });
      const tree = await readTree(nodeDisk, join(home, 'out'));
      expect([...manifest.files.map((file) => file.path), 'manifest.json'].sort()).toEqual([...tree.files].sort());
      for (const file of manifest.files) {
        const bytes = await readFile(join(home, 'out', file.path));
        expect(bytes.length).toBe(file.bytes);
        expect(sha256(bytes)).toBe(file.sha256);
        expect(file.title).not.toBe('');
      }
      for (const path of ['schedules/pieces.csv', 'schedules/bends.csv', 'schedules/stakeout.csv', 'report/findings.json', 'report/findings.pdf', 'stations.json', 'juniper-flat.penwright.json']) {
        expect(tree.files).toContain(path);
      }
      expect(await readdir(home)).toEqual(['out', 'yard.penwright.json']);
    }));

  it('shows how far the work is, file by file, and clears that line at the end', () =>
    withProject(project, async (home) => {
      const { progress } = await run(home, PART);
      const files = (await readTree(nodeDisk, join(home, 'out'))).files.length;
      expect(progress).toHaveLength(files + 1);
      expect(progress[0]).toMatch(new RegExp(`^1 of ${String(files)} `));
      expect(progress.at(-2)).toBe(`${String(files)} of ${String(files)}  manifest.json`);
      expect(progress.at(-1)).toBeNull();
    }));

  it('is replaced whole by the next run, and holds the units that were asked for', () =>
    withProject(project, async (home) => {
      await run(home, SCHEDULES);
      const first = await snapshot(join(home, 'out'));
      expect((await run(home, SCHEDULES)).code).toBe(0);
      expect(await snapshot(join(home, 'out'))).toEqual(first);
      expect((await run(home, [...SCHEDULES, '--units', 'mm'])).code).toBe(0);
      const metric = await snapshot(join(home, 'out'));
      expect(readManifest(metric['manifest.json'] ?? '')?.units).toBe('mm');
      // The project's own copy stays as it was written.
      expect(metric['juniper-flat.penwright.json']).toBe(first['juniper-flat.penwright.json']);
      const lengths = (csv: string | undefined): number[] => (csv ?? '').split('\r\n').slice(1, -1).map((row) => Number(row.split(',')[7]));
      const inches = lengths(first['schedules/bends.csv']);
      expect(inches.length).toBeGreaterThan(2);
      lengths(metric['schedules/bends.csv']).forEach((length, index) => { expect(length / (inches[index] ?? NaN)).toBeCloseTo(25.4, 4); });
    }));

  it('is left as it is where it is not wholly a package, with 3 and why', () =>
    withProject(project, async (home) => {
      await mkdir(join(home, 'out'));
      await writeFile(join(home, 'out', 'letter.txt'), 'dear');
      await writeFile(join(home, 'file'), '');
      await symlink('nowhere', join(home, 'link'));
      const before = await snapshot(home);
      for (const [out, why] of [['out', /holds no package/], ['file', /is not a folder/], ['file/inner', /not a folder/], ['link', /link to nothing/], ['.', /holds the project file/]] as const) {
        const outcome = await run(home, ['yard.penwright.json', '--out', out]);
        expect(outcome).toMatchObject({ code: 3, out: [] });
        expect(outcome.err).toHaveLength(1);
        expect(outcome.err[0]).toMatch(why);
        expect(outcome.err[0]?.startsWith(`${out}: `)).toBe(true);
        expect(await snapshot(home)).toEqual(before);
      }
    }));

  it('is never the one that the project itself lies in', () =>
    withProject(project, async (home) => {
      await run(home, PART);
      const inside = join('out', 'juniper-flat.penwright.json');
      const before = await snapshot(home);
      const outcome = await run(home, [inside, '--out', 'out']);
      expect(outcome.code).toBe(3);
      expect(outcome.err).toEqual([expect.stringMatching(/^out: holds the project file/)]);
      expect(await snapshot(home)).toEqual(before);
    }));

  it('still holds the old package where the disk is full', () =>
    withProject(project, async (home) => {
      await run(home, PART);
      const before = await snapshot(home);
      const outcome = await run(home, PART, { disk: refusingDisk(5, Infinity, 'ENOSPC').disk });
      expect(outcome.code).toBe(3);
      expect(outcome.err[0]).toMatch(/^out: cannot be written \(the disk is full, ENOSPC\)/);
      await run(home, ['none', '--out', 'out']);
      expect(await snapshot(home)).toEqual(before);
    }));
});

describe('a part of a package', () => {
  it('holds the kinds that were asked for, with the project and a manifest', () =>
    withProject(project, async (home) => {
      expect((await run(home, [...WORDS, '--only', 'schedules'])).code).toBe(0);
      const tree = await readTree(nodeDisk, join(home, 'out'));
      expect(tree.folders).toEqual(['schedules']);
      expect(tree.files.filter((file) => !file.includes('/'))).toEqual(['juniper-flat.penwright.json', 'manifest.json']);
    }));

  it('never takes the place of a fuller one', () =>
    withProject(project, async (home) => {
      await run(home, PART);
      const before = await snapshot(home);
      const outcome = await run(home, [...WORDS, '--only', 'report']);
      expect(outcome.code).toBe(3);
      expect(outcome.err).toEqual([expect.stringMatching(/^out: holds a fuller package \(with .*stations as well\)/)]);
      expect(await snapshot(home)).toEqual(before);
    }));
});

describe('a strict run', () => {
  const tight = structuredClone(project);
  put(tight, ['chute', 'runs'], [{ kind: 'straight', length: 12 }, { kind: 'arc', insideRadius: 60, angle: 120, hand: 'right' }]);

  put(tight, ['catwalks'], []);

  it('ends in 1 where a finding says Fix, with the package written', () =>
    withProject(tight, async (home) => {
      const outcome = await run(home, [...PART, '--strict']);
      expect(outcome.code).toBe(1);
      expect(outcome.out.some((line) => line.startsWith('Fix: see-ahead'))).toBe(true);
      expect(await nodeDisk.kindOf(join(home, 'out', 'manifest.json'))).toBe('file');
      expect((await run(home, PART)).code).toBe(0);
    }));

  // A way out for people from each place, and one for the last animal in the crowd pen and in the chute.
  const safe = structuredClone(project);
  put(safe, ['openings'], [
    { kind: 'man-gate', run: 'crowd-pen', side: 'right', at: '15 ft', width: 14 },
    { kind: 'man-gate', run: 'crowd-pen', side: 'right', at: '26 ft', width: 28 },
    // On the side away from the catwalk: nobody steps out under its deck.
    { kind: 'man-gate', run: 'chute', side: 'right', at: 30, width: 14 },
    { kind: 'man-gate', run: 'chute', side: 'right', at: 480, width: 28 },
    { kind: 'man-gate', run: 'hold-1-back', side: 'right', at: '4 ft', width: 14 },
    { kind: 'man-gate', run: 'squeeze-pad', side: 'right', at: '4 ft', width: 14 },
    { kind: 'man-gate', run: 'sort-1-back', side: 'left', at: '4 ft', width: 14 },
    { kind: 'man-gate', run: 'load-1', side: 'right', at: '17 ft', width: 14 },
    { kind: 'man-gate', run: 'unload-1', side: 'left', at: '4 ft', width: 14 },
    { kind: 'backstop', run: 'chute', at: 96, held: 'rope' },
  ]);

  it('ends in 0 where none does', () =>
    withProject(safe, async (home) => {
      const outcome = await run(home, [...PART, '--strict']);
      const findings = JSON.parse(await readFile(join(home, 'out', 'report', 'findings.json'), 'utf8')) as { result: string }[];
      expect(findings.some((finding) => finding.result === 'fix')).toBe(false);
      expect(outcome.code).toBe(0);
    }));
});

describe('a run that is stopped', () => {
  it('while it makes the files, leaves nothing', () =>
    withProject(project, async (home) => {
      const stop = new AbortController();
      let left = 3;
      const outcome = await run(home, PART, { signal: stop.signal, onPause: () => {
        left -= 1;
        if (left === 0) stop.abort(new Error('SIGINT'));
      } });
      expect(outcome.code).toBe(130);
      expect(outcome.err).toEqual(['Interrupted: what stood in out still stands']);
      expect(await readdir(home)).toEqual(['yard.penwright.json']);
    }));

  it('while it writes them, leaves what stood there', () =>
    withProject(project, async (home) => {
      await run(home, PART);
      const before = await snapshot(home);
      const stop = new AbortController();
      let left = 6;
      const disk = { ...nodeDisk, writeNew: (path: string, bytes: Uint8Array) => {
        left -= 1;
        if (left === 0) stop.abort(new Error('SIGINT'));
        return nodeDisk.writeNew(path, bytes);
      } };
      expect((await run(home, PART, { signal: stop.signal, disk })).code).toBe(130);
      expect(await snapshot(home)).toEqual(before);
    }));
});
