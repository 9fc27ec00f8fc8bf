import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, it } from 'vitest';
import { mend, nodeDisk } from '../../electron/disk/index.ts';
import { exampleProject, PART, withProject, WORDS } from './support/run.ts';
import { digests, startCommand, startThroughNpm, until, wait } from './support/spawn.ts';

const project = await exampleProject();
const small = await exampleProject('tight-curve');
const KILLS = 8;

/** The same figures on every run (Park and Miller's generator, common knowledge). */
function dice(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

describe('the command as a process', () => {
  it('is called through npm from any folder, whose paths it takes', () =>
    withProject(project, async (home) => {
      const ended = await startThroughNpm(home, PART).ended;
      expect(ended).toMatchObject({ code: 0, err: '' });
      expect(ended.out).toMatch(/Written: \d+ files in out\n/);
      expect(await nodeDisk.kindOf(join(home, 'out', 'manifest.json'))).toBe('file');
      const faulty = await startThroughNpm(home, ['none.json', '--out', 'out']).ended;
      expect(faulty.code).toBe(2);
      expect(faulty.err).toMatch(/^none\.json: is not there/);
      const kept = await startThroughNpm(home, ['yard.penwright.json', '--out', '.']).ended;
      expect(kept.code).toBe(3);
    }));

  it('shows no progress where nobody watches', () =>
    withProject(project, async (home) => {
      const ended = await startCommand(home, PART).ended;
      expect(ended).toMatchObject({ code: 0, err: '' });
      expect(ended.out).not.toMatch(/[\r\u001b]/);
    }));

  it('writes the same bytes in any time zone and language', () =>
    withProject(project, async (home) => {
      const worlds = [
        { TZ: 'Pacific/Kiritimati', LANG: 'de_DE.UTF-8', LC_ALL: 'de_DE.UTF-8' },
        { TZ: 'America/St_Johns', LANG: 'tr_TR.UTF-8', LC_ALL: 'tr_TR.UTF-8' },
      ];
      for (const [index, world] of worlds.entries()) {
        const ended = await startCommand(home, ['yard.penwright.json', '--out', `out${String(index)}`], world).ended;
        expect(ended).toMatchObject({ code: 0, err: '' });
      }
      const first = await digests(join(home, 'out0'));
      expect(Object.keys(first ?? {}).length).toBeGreaterThan(5);
      expect(await digests(join(home, 'out1'))).toEqual(first);
    }));
});

describe('a process that is killed', () => {
  it('at any moment leaves the old package or the new one, and the next run mends it', () =>
    withProject(project, async (home) => {
      const out = join(home, 'out');
      const words = (other: boolean): readonly string[] => [other ? 'other.penwright.json' : 'yard.penwright.json', '--out', 'out', '--only', 'report,stations'];
      await writeFile(join(home, 'other.penwright.json'), JSON.stringify({ ...project, title: 'Other Hill', client: 'x' }));
      const begun = performance.now();
      expect((await startCommand(home, words(true)).ended).code).toBe(0);
      const whole = performance.now() - begun;
      const second = await digests(out);
      expect((await startCommand(home, words(false)).ended).code).toBe(0);
      const first = await digests(out);
      expect(isDeepStrictEqual(first, second)).toBe(false);
      const roll = dice(20260302);
      let inTheMiddle = 0;
      let fresh = false;
      for (let kill = 0; kill < KILLS; kill += 1) {
        const started = startCommand(home, words(!fresh));
        if (kill % 2 === 0) await wait(roll() * whole);
        else {
          await until(join(home, '.out.penwright-work'), started);
          await wait(roll() * 25);
        }
        started.child.kill('SIGKILL');
        const ended = await started.ended;
        if (ended.signal === 'SIGKILL' && (await readdir(home)).includes('.out.penwright-work')) inTheMiddle += 1;
        await mend(nodeDisk, out, 'out');
        expect([first, second], `kill ${String(kill)}`).toContainEqual(await digests(out));
        expect(await readdir(home)).toEqual(['other.penwright.json', 'out', 'yard.penwright.json']);
        fresh = isDeepStrictEqual(await digests(out), second);
      }
      // Some of them came while the folder was being written; what each step leaves is held by tests/disk/killed.test.ts.
      expect(inTheMiddle).toBeGreaterThan(0);
      expect((await startCommand(home, words(false)).ended).code).toBe(0);
      expect(await digests(out)).toEqual(first);
    }));

  it('by a person with Ctrl-C ends by itself, with what stood there', () =>
    withProject(small, async (home) => {
      const begun = performance.now();
      expect((await startCommand(home, WORDS).ended).code).toBe(0);
      const whole = performance.now() - begun;
      const before = await digests(join(home, 'out'));
      // While it works out what to write: at once, long before it would have been done. A program that starts it sees the signal, a shell 130.
      const early = startCommand(home, [...WORDS, '--units', 'mm']);
      await wait(whole / 2);
      const asked = performance.now();
      early.child.kill('SIGINT');
      const stopped = await early.ended;
      expect(performance.now() - asked).toBeLessThan(Math.max(1000, whole / 4));
      expect(stopped.code === 130 || stopped.signal === 'SIGINT').toBe(true);
      expect(await digests(join(home, 'out'))).toEqual(before);
      expect(await readdir(home)).toEqual(['out', 'yard.penwright.json']);
      const started = startCommand(home, [...WORDS, '--units', 'mm']);
      await until(join(home, '.out.penwright-work'), started);
      started.child.kill('SIGINT');
      const ended = await started.ended;
      // Too late to stop it, it is written whole.
      expect([130, 0]).toContain(ended.code);
      if (ended.code === 130) {
        expect(ended.err).toBe('Interrupted: what stood in out still stands\n');
        expect(await digests(join(home, 'out'))).toEqual(before);
      } else expect(await readFile(join(home, 'out', 'manifest.json'), 'utf8')).toContain('"units": "mm"');
      expect(await readdir(home)).toEqual(['out', 'yard.penwright.json']);
    }));
});
