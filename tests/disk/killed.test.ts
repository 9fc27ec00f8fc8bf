import { mkdir, readdir, rename, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { type Disk, mend, Refused } from '../../electron/disk/index.ts';
import { nodeDisk } from '../../electron/disk/node-disk.ts';
import { refusingDisk, Stopped, stoppingDisk, sureDisk } from './support/failing-disk.ts';
import { inTemporaryFolder, picture, smallPackage, snapshot, write } from './support/packages.ts';

const first = smallPackage('first');
const second = smallPackage('second');

const starts: readonly (readonly [string, (out: string) => Promise<unknown>, Record<string, string> | null])[] = [
  ['no folder', () => Promise.resolve(), null],
  ['an empty folder', (out) => mkdir(out), {}],
  ['a package', (out) => write(out, first), picture(first)],
];

const standsAt = async (out: string): Promise<Record<string, string> | null> =>
  (await nodeDisk.kindOf(out)) === null ? null : snapshot(out);

async function stepsOf(prepare: (out: string) => Promise<unknown>): Promise<number> {
  const counter = sureDisk();
  await inTemporaryFolder(async (home) => {
    await prepare(join(home, 'out'));
    await write(join(home, 'out'), second, { disk: counter.disk });
  });
  return counter.steps();
}

describe.each(starts)('a machine that stops at any step of a run over %s', (_, prepare, before) => {
  it('has the old or the new after the next run has looked, and nothing else', async () => {
    const steps = await stepsOf(prepare);
    expect(steps).toBeGreaterThan(15);
    let kept = 0;
    let changed = 0;
    for (let step = 1; step <= steps; step += 1) {
      await inTemporaryFolder(async (home) => {
        const out = join(home, 'out');
        await prepare(out);
        await expect(write(out, second, { disk: stoppingDisk(step).disk })).rejects.toBeInstanceOf(Stopped);
        await mend(nodeDisk, out, 'OUT');
        const stands = await standsAt(out);
        expect([before, picture(second)], `step ${String(step)}`).toContainEqual(stands);
        if (isDeepStrictEqual(stands, before)) kept += 1;
        else changed += 1;
        expect(await readdir(home)).toEqual(stands === null ? [] : ['out']);
      });
    }
    // Both happen: the steps before the swap leave the old, those after it the new.
    expect(kept).toBeGreaterThan(5);
    expect(changed).toBeGreaterThan(2);
  });

  it('is written whole by the next run, even where that one is stopped while it mends', async () => {
    const steps = await stepsOf(prepare);
    for (let step = 1; step <= steps; step += 1) {
      await inTemporaryFolder(async (home) => {
        const out = join(home, 'out');
        await prepare(out);
        await expect(write(out, second, { disk: stoppingDisk(step).disk })).rejects.toBeInstanceOf(Stopped);
        for (let again = 1; ; again += 1) {
          const stopping = stoppingDisk(again);
          const mended = await mend(stopping.disk, out, 'OUT').then(() => true, (error: unknown) => {
            expect(error).toBeInstanceOf(Stopped);
            return false;
          });
          if (mended) break;
        }
        await write(out, second);
        expect(await snapshot(home)).toEqual(Object.fromEntries([['out/', '(folder)'], ...Object.entries(picture(second)).map(([path, text]) => [`out/${path}`, text])]));
      });
    }
  });

  it('and one whose disk refuses a single step leaves the old, or the new with leftovers told of', async () => {
    const steps = await stepsOf(prepare);
    for (let step = 1; step <= steps; step += 1) {
      await inTemporaryFolder(async (home) => {
        const out = join(home, 'out');
        await prepare(out);
        const outcome = await write(out, second, { disk: refusingDisk(step, step, 'EIO').disk }).then(
          (leftover) => ({ leftover }),
          (error: unknown) => ({ error }),
        );
        if ('error' in outcome) {
          expect(outcome.error).toBeInstanceOf(Refused);
          expect(await standsAt(out), `step ${String(step)}`).toEqual(before);
          expect(await readdir(home)).toEqual(before === null ? [] : ['out']);
        } else {
          expect(await standsAt(out)).toEqual(picture(second));
          expect(await readdir(home)).toEqual(outcome.leftover === null ? ['out'] : ['.out.penwright-work', 'out']);
        }
      });
    }
  });

  it('and one whose disk refuses everything from some step on is mended once the disk works again', async () => {
    const steps = await stepsOf(prepare);
    for (let step = 1; step <= steps; step += 1) {
      await inTemporaryFolder(async (home) => {
        const out = join(home, 'out');
        await prepare(out);
        await write(out, second, { disk: refusingDisk(step, Infinity, 'ENOSPC').disk }).catch((error: unknown) => {
          expect(error).toBeInstanceOf(Refused);
        });
        await mend(nodeDisk, out, 'OUT');
        expect([before, picture(second)]).toContainEqual(await standsAt(out));
      });
    }
  });
});

/** Leaves a run stopped between the two renames: the old package taken away, the new one not yet in its place. */
async function stopBetweenRenames(out: string): Promise<void> {
  await write(out, first);
  const disk: Disk = {
    ...nodeDisk,
    rename: async (from, to) => {
      if (from.endsWith('new')) throw new Stopped();
      await nodeDisk.rename(from, to);
    },
    removeFile: () => Promise.reject(new Stopped()),
    kindOf: (path) => (path.endsWith('old') ? Promise.reject(new Stopped()) : nodeDisk.kindOf(path)),
  };
  await expect(write(out, second, { disk })).rejects.toBeInstanceOf(Stopped);
  expect(await nodeDisk.kindOf(out)).toBeNull();
}

describe('mending', () => {
  it('puts the old package back where the swap stopped half way', () =>
    inTemporaryFolder(async (home) => {
      await stopBetweenRenames(join(home, 'out'));
      await mend(nodeDisk, join(home, 'out'), 'OUT');
      expect(await snapshot(join(home, 'out'))).toEqual(picture(first));
      expect(await readdir(home)).toEqual(['out']);
    }));

  it('never puts it over what a person has put there since', () =>
    inTemporaryFolder(async (home) => {
      const out = join(home, 'out');
      await stopBetweenRenames(out);
      await mkdir(out);
      await writeFile(join(out, 'mine.txt'), 'mine');
      const before = await snapshot(home);
      await expect(mend(nodeDisk, out, 'OUT')).rejects.toMatchObject({ refusal: { key: 'command.out-taken' } });
      expect(await snapshot(home)).toEqual(before);
    }));

  it('leaves a folder of that name that is not of its making', () =>
    inTemporaryFolder(async (home) => {
      const work = join(home, '.out.penwright-work');
      for (const name of ['old', 'notes.txt']) {
        await mkdir(work);
        if (name === 'old') await mkdir(join(work, 'old'));
        else await writeFile(join(work, name), 'mine');
        const before = await snapshot(home);
        await expect(write(join(home, 'out'), first)).rejects.toMatchObject({ refusal: { key: 'command.work-foreign' } });
        expect(await snapshot(home)).toEqual(before);
        await rm(work, { recursive: true });
      }
    }));

  it('leaves a file that a person put among the leftovers', () =>
    inTemporaryFolder(async (home) => {
      const out = join(home, 'out');
      await stopBetweenRenames(out);
      const mine = join(home, '.out.penwright-work', 'new', 'drawings', 'mine.txt');
      await writeFile(mine, 'mine');
      await expect(mend(nodeDisk, out, 'OUT')).rejects.toMatchObject({ refusal: { key: 'command.work-stranger' } });
      expect(await nodeDisk.kindOf(mine)).toBe('file');
      expect(await snapshot(out)).toEqual(picture(first));
      await rename(mine, join(home, 'mine.txt'));
      await write(out, second);
      expect(await snapshot(out)).toEqual(picture(second));
    }));

  it('waits for nobody that is gone, and refuses while another process is at work', () =>
    inTemporaryFolder(async (home) => {
      const work = join(home, '.out.penwright-work');
      await mkdir(work);
      const journal = (pid: number, started: string): string =>
        JSON.stringify({ format: 'penwright-swap', version: 1, process: pid, started, fresh: [], old: null });
      const started = (pid: number): Promise<string> =>
        nodeDisk.read(`/proc/${String(pid)}/stat`).then((bytes) => new TextDecoder().decode(bytes).replace(/^.*\) /s, '').split(' ')[19] ?? '', () => '');
      await writeFile(join(work, 'journal.json'), journal(process.ppid, await started(process.ppid)));
      await expect(write(join(home, 'out'), first)).rejects.toMatchObject({ refusal: { key: 'command.out-in-use' } });
      // The same number, given to a later process.
      await writeFile(join(work, 'journal.json'), journal(process.ppid, 'another time'));
      await write(join(home, 'out'), first);
      expect(await snapshot(join(home, 'out'))).toEqual(picture(first));
    }));
});
