import { mkdir, readdir, readlink, stat, symlink, writeFile, chmod, unlink } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Refused } from '../../electron/disk/index.ts';
import { packagePlace } from '../../electron/disk/place.ts';
import { nodeDisk } from '../../electron/disk/node-disk.ts';
import { inTemporaryFolder, picture, smallPackage, snapshot, write } from './support/packages.ts';

const first = smallPackage('first');
const second = smallPackage('second');

async function refusedWith(action: Promise<unknown>): Promise<string> {
  const error: unknown = await action.then(() => null, (reason: unknown) => reason);
  if (!(error instanceof Refused)) throw new Error(`refused with no reason: ${String(error)}`);
  return error.refusal.key;
}

describe('a package takes its place', () => {
  it('in a folder that is not there yet, nor its parents', () =>
    inTemporaryFolder(async (home) => {
      expect(await write(join(home, 'a', 'b', 'out'), first)).toBeNull();
      expect(await snapshot(join(home, 'a', 'b', 'out'))).toEqual(picture(first));
      expect(await readdir(join(home, 'a', 'b'))).toEqual(['out']);
    }));

  it('in an empty folder, whose permissions it keeps', () =>
    inTemporaryFolder(async (home) => {
      await mkdir(join(home, 'out'));
      await chmod(join(home, 'out'), 0o770);
      await write(join(home, 'out'), first);
      expect(await snapshot(join(home, 'out'))).toEqual(picture(first));
      expect((await stat(join(home, 'out'))).mode & 0o777).toBe(0o770);
      expect(await readdir(home)).toEqual(['out']);
    }));

  it('of one written before, of which no file is left behind', () =>
    inTemporaryFolder(async (home) => {
      await write(join(home, 'out'), first);
      await write(join(home, 'out'), second);
      expect(await snapshot(join(home, 'out'))).toEqual(picture(second));
      expect(await readdir(home)).toEqual(['out']);
    }));

  it('of one from which a person deleted a file', () =>
    inTemporaryFolder(async (home) => {
      await write(join(home, 'out'), first);
      await unlink(join(home, 'out', 'drawings', '101 plan.svg'));
      await write(join(home, 'out'), second);
      expect(await snapshot(join(home, 'out'))).toEqual(picture(second));
    }));

  it('behind a link, which stays a link', () =>
    inTemporaryFolder(async (home) => {
      await mkdir(join(home, 'real'));
      await symlink('real', join(home, 'out'));
      const place = await packagePlace(nodeDisk, home, 'out');
      await write(place, first);
      await write(place, second);
      expect(await readlink(join(home, 'out'))).toBe('real');
      expect(await snapshot(join(home, 'real'))).toEqual(picture(second));
    }));
});

describe('what is not wholly a package of ours is left as it is', () => {
  const cases: readonly (readonly [string, string, (out: string) => Promise<unknown>])[] = [
    ['a folder with somebody\'s file', 'command.out-no-manifest', async (out) => {
      await mkdir(out);
      await writeFile(join(out, 'letter.txt'), 'dear');
    }],
    ['a folder with an empty folder in it', 'command.out-no-manifest', (out) => mkdir(join(out, 'photos'), { recursive: true })],
    ['a folder with another program\'s manifest', 'command.out-foreign-manifest', async (out) => {
      await mkdir(out);
      await writeFile(join(out, 'manifest.json'), '{"name":"site","icons":[]}');
    }],
    ['a folder whose manifest is no JSON', 'command.out-foreign-manifest', async (out) => {
      await mkdir(out);
      await writeFile(join(out, 'manifest.json'), 'hello');
    }],
    ['a package with a file added', 'command.out-stranger', async (out) => {
      await write(out, first);
      await writeFile(join(out, 'drawings', 'notes.txt'), 'mine');
    }],
    ['a package with a folder added', 'command.out-stranger', async (out) => {
      await write(out, first);
      await mkdir(join(out, 'photos'));
    }],
    ['a package with a link added', 'command.out-stranger', async (out) => {
      await write(out, first);
      await symlink('..', join(out, 'up'));
    }],
    ['a package with a link in a listed file\'s place', 'command.out-stranger', async (out) => {
      await write(out, first);
      await unlink(join(out, 'drawings', '101 plan.svg'));
      await symlink('../manifest.json', join(out, 'drawings', '101 plan.svg'));
    }],
    ['a package with a file edited', 'command.out-edited', async (out) => {
      await write(out, first);
      await writeFile(join(out, 'schedules', 'first.csv'), 'firsT');
    }],
    ['a file', 'command.out-not-folder', (out) => writeFile(out, 'a file')],
  ];

  for (const [name, key, prepare] of cases) {
    it(name, () =>
      inTemporaryFolder(async (home) => {
        await prepare(join(home, 'out'));
        const before = await snapshot(home);
        expect(await refusedWith(write(join(home, 'out'), second))).toBe(key);
        expect(await snapshot(home)).toEqual(before);
      }));
  }

  it('a package with more kinds than a part of one has', () =>
    inTemporaryFolder(async (home) => {
      await write(join(home, 'out'), first);
      const part = smallPackage('part', ['schedules']);
      expect(await refusedWith(write(join(home, 'out'), part, { only: ['schedules'] }))).toBe('command.out-fuller');
      expect(await snapshot(join(home, 'out'))).toEqual(picture(first));
    }));

  it('but a part gives way to the same part and to more', () =>
    inTemporaryFolder(async (home) => {
      const part = smallPackage('part', ['schedules']);
      await write(join(home, 'out'), part);
      await write(join(home, 'out'), part, { only: ['schedules'] });
      await write(join(home, 'out'), first, { only: ['drawings', 'schedules'] });
      expect(await snapshot(join(home, 'out'))).toEqual(picture(first));
    }));
});

describe('the place of a package', () => {
  it('is no link to nothing, and nothing under a file', () =>
    inTemporaryFolder(async (home) => {
      await symlink('nowhere', join(home, 'out'));
      await writeFile(join(home, 'file'), '');
      expect(await refusedWith(packagePlace(nodeDisk, home, 'out'))).toBe('command.out-dangling');
      expect(await refusedWith(packagePlace(nodeDisk, home, 'out/inner'))).toBe('command.out-dangling');
      expect(await refusedWith(packagePlace(nodeDisk, home, 'file/inner'))).toBe('command.out-parent');
    }));

  it('is found through a link above it', () =>
    inTemporaryFolder(async (home) => {
      await mkdir(join(home, 'real'));
      await symlink('real', join(home, 'link'));
      expect(await packagePlace(nodeDisk, home, 'link/a/b')).toBe(join(await nodeDisk.realPath(home), 'real', 'a', 'b'));
    }));
});

describe('a run that is told to stop', () => {
  it('leaves what stood there, and nothing beside it', () =>
    inTemporaryFolder(async (home) => {
      await write(join(home, 'out'), first);
      const stop = new AbortController();
      let left = 3;
      const disk = { ...nodeDisk, writeNew: (path: string, bytes: Uint8Array) => {
        left -= 1;
        if (left === 0) stop.abort(new Error('stop'));
        return nodeDisk.writeNew(path, bytes);
      } };
      await expect(write(join(home, 'out'), second, { disk, signal: stop.signal })).rejects.toThrow('stop');
      expect(await snapshot(home)).toEqual(Object.fromEntries([['out/', '(folder)'], ...Object.entries(picture(first)).map(([path, text]) => [`out/${path}`, text])]));
    }));

  it('takes away the parents that it made', () =>
    inTemporaryFolder(async (home) => {
      const stop = new AbortController();
      stop.abort(new Error('stop'));
      await expect(write(join(home, 'a', 'b', 'out'), first, { signal: stop.signal })).rejects.toThrow('stop');
      expect(await readdir(home)).toEqual([]);
    }));
});

describe('two runs at once', () => {
  it('give one package, and a refusal where they met', () =>
    inTemporaryFolder(async (home) => {
      const runs = await Promise.allSettled([first, second, first, second].map((files) => write(join(home, 'out'), files)));
      expect(runs.some((run) => run.status === 'fulfilled')).toBe(true);
      for (const run of runs) if (run.status === 'rejected') expect(run.reason).toBeInstanceOf(Refused);
      expect([picture(first), picture(second)]).toContainEqual(await snapshot(join(home, 'out')));
      expect(await readdir(home)).toEqual(['out']);
    }));
});
