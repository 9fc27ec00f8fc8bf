import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROOT } from '../structure/sources.ts';
import { deskIn, openFile, value } from '../main/support/desk.ts';
import { seeded } from '../support/random.ts';
import { Stopped, stoppingDisk, sureDisk, refusingDisk } from './support/failing-disk.ts';
import { inTemporaryFolder } from './support/packages.ts';
import { numberIn, textOf } from './support/saved-text.ts';

const NAME = 'yard.penwright.json';

async function withProject(test: (home: string, path: string) => Promise<void>, text = 'old'): Promise<void> {
  await inTemporaryFolder(async (home) => {
    await mkdir(join(home, 'own'));
    await writeFile(join(home, NAME), text);
    await test(home, join(home, NAME));
  });
}

/** What a window does between two moments at which nothing is unsaved. */
async function keepAndSave(home: string, disk: Parameters<typeof deskIn>[1]): Promise<void> {
  const desk = await deskIn(home, disk);
  const { file } = await openFile(desk, join(home, NAME));
  value(await desk.projects.answers.keepDraft(file, 'new'));
  value(await desk.projects.answers.saveProject(file, 'new', false));
}

describe('a machine that stops at any step of a draft and a save', () => {
  it('has the old or the new, the draft where the old, and saves again after', async () => {
    const counter = sureDisk();
    await withProject((home) => keepAndSave(home, counter.disk));
    const steps = counter.steps();
    expect(steps).toBeGreaterThan(10);
    const found = new Set<string>();
    for (let last = 1; last <= steps; last += 1) {
      await withProject(async (home, path) => {
        const stopping = stoppingDisk(last);
        const told = await keepAndSave(home, stopping.disk).then(() => null, (error: unknown) => error);
        const text = await readFile(path, 'utf8');
        // Once the file is saved, taking the draft away and noting the recent one are tried and no more.
        if (told === null) expect(text).toBe('new');
        else expect(told).toBeInstanceOf(Stopped);
        expect(['old', 'new']).toContain(text);
        const next = await deskIn(home);
        const drafts = (await next.projects.answers.drafts()).map((draft) => draft.text);
        expect(text === 'new' ? [[]] : [[], ['new']]).toContainEqual(drafts);
        found.add(`${text} ${drafts.join()}`);
        const { file } = await openFile(next, path);
        value(await next.projects.answers.keepDraft(file, 'newer'));
        expect(value(await next.projects.answers.saveProject(file, 'newer', false))).toEqual({ kind: 'saved' });
        expect(await readFile(path, 'utf8')).toBe('newer');
        for (const draft of await next.projects.answers.drafts()) value(await next.projects.answers.throwDraft(draft.id));
        expect(await readdir(home)).toEqual(['own', NAME]);
        expect(await readdir(join(home, 'own', 'drafts'))).toEqual([]);
      });
    }
    expect([...found].sort()).toEqual(['new ', 'old ', 'old new']);
  });

  it('or a disk that refuses any one of them: told, or done, and never half', async () => {
    const counter = sureDisk();
    await withProject((home) => keepAndSave(home, counter.disk));
    for (let step = 1; step <= counter.steps(); step += 1) {
      await withProject(async (home, path) => {
        const refusing = refusingDisk(step, step, 'EIO');
        const told = await keepAndSave(home, refusing.disk).then(() => null, (error: unknown) => error);
        const text = await readFile(path, 'utf8');
        expect(['old', 'new']).toContain(text);
        if (told === null) expect(text).toBe('new');
        else expect((told as Error).message).toMatch(/cannot be written \(the disk reports an error, EIO\)/);
        expect((await readdir(home)).filter((name) => name.endsWith('.penwright-save'))).toEqual([]);
      });
    }
  });
});

describe('a process that is killed while it keeps drafts and saves', () => {
  const KILLS = 200;
  const LANES = 4;
  let bundle = '';

  beforeAll(async () => {
    const out = await mkdtemp(join(tmpdir(), 'penwright-'));
    bundle = join(out, 'saving-child.cjs');
    await build({
      configFile: false, root: ROOT, logLevel: 'error', ssr: { noExternal: true },
      build: { ssr: join(ROOT, 'tests/disk/support/saving-child.ts'), outDir: out, rolldownOptions: { output: { format: 'cjs', entryFileNames: 'saving-child.cjs' } } },
    });
  });
  afterAll(() => rm(join(bundle, '..'), { recursive: true, force: true }));

  /** Starts a window that saves from `from` on and kills it some milliseconds after its first save. Returns what it told to be done. */
  const kill = (home: string, from: number, after: number): Promise<{ readonly drafts: number; readonly saved: number; readonly err: string; readonly signal: string | null }> =>
    new Promise((done) => {
      const child = spawn(process.execPath, [bundle, home, String(from)], { stdio: ['ignore', 'pipe', 'pipe'] });
      let out = '';
      let err = '';
      let armed = false;
      child.stderr.on('data', (part: Buffer) => { err += part.toString('utf8'); });
      child.stdout.on('data', (part: Buffer) => {
        out += part.toString('utf8');
        if (!armed && out.includes('saved')) {
          armed = true;
          setTimeout(() => child.kill('SIGKILL'), after);
        }
      });
      child.on('close', (_, signal) => {
        const last = (word: string): number => Number([...out.matchAll(new RegExp(`${word} (\\d+)\n`, 'g'))].at(-1)?.[1] ?? NaN);
        done({ drafts: last('draft'), saved: last('saved'), err, signal });
      });
    });

  it(`${String(KILLS)} times leaves the file whole, loses nothing that was told to be kept, and never stops the next save`, async () => {
    let inTheMiddle = 0;
    const lane = async (seed: number): Promise<void> => {
      const random = seeded(seed);
      await withProject(async (home, path) => {
        let from = 1;
        for (let round = 0; round < KILLS / LANES; round += 1) {
          const told = await kill(home, from, random.next() * 30);
          expect([told.err, told.signal]).toEqual(['', 'SIGKILL']);
          expect(told.saved).toBeGreaterThanOrEqual(from);
          const saved = numberIn(await readFile(path, 'utf8'));
          // What was told to be saved is there; what was not told may have been done at the last moment.
          expect(saved - told.saved === 0 || saved - told.saved === 1).toBe(true);
          if ([...await readdir(home), ...await readdir(join(home, 'own', 'drafts'))].some((name) => name.endsWith('.penwright-save'))) inTheMiddle += 1;
          const { projects } = await deskIn(home);
          const drafts = await projects.answers.drafts();
          const kept = Math.max(saved, ...drafts.map((draft) => numberIn(draft.text)));
          expect(kept).toBeGreaterThanOrEqual(told.drafts);
          for (const draft of drafts) value(await projects.answers.throwDraft(draft.id));
          from = kept + 1;
        }
        // The next window's save takes away whatever lay about.
        const desk = await deskIn(home);
        const { file } = await openFile(desk, path);
        value(await desk.projects.answers.keepDraft(file, textOf(from)));
        expect(value(await desk.projects.answers.saveProject(file, textOf(from), false))).toEqual({ kind: 'saved' });
        expect(await readdir(home)).toEqual(['own', NAME]);
      }, textOf(0));
    };
    await Promise.all(Array.from({ length: LANES }, (_, index) => lane(index + 1)));
    // Most kills fall between two steps of a save, where a new file stands beside the old one; with none of them nothing is proven.
    expect(inTheMiddle).toBeGreaterThan(KILLS / 10);
  });
});
