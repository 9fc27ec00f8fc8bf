import { mkdir, readdir, symlink } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeDisk } from '../../electron/disk/index.ts';
import { snapshot } from '../disk/support/packages.ts';
import { FAULTY, UNREADABLE } from './support/faulty.ts';
import { exampleProject, run, withProject, WORDS } from './support/run.ts';

describe('a faulty project', () => {
  it('comes in at least 40 kinds here', () => {
    expect(new Set(FAULTY.map((kind) => kind.name)).size).toBe(FAULTY.length);
    expect(FAULTY.length).toBeGreaterThanOrEqual(40);
  });

  for (const kind of FAULTY) {
    it(`(${kind.name}) ends in 2, its path named with what is allowed, and nothing written`, async () => {
      const project = await exampleProject();
      kind.spoil(project);
      await withProject(project, async (home) => {
        const before = await snapshot(home);
        const outcome = await run(home, WORDS);
        expect(outcome.code).toBe(2);
        for (const path of kind.paths) expect(outcome.err.filter((line) => line.startsWith(`${path}:`) || line.startsWith(`${path}.`)), outcome.err.join('\n')).toHaveLength(1);
        expect(outcome.err.join('\n')).toMatch(kind.allowed);
        expect(outcome.err.every((line) => /^[^:]+: .*(allowed|must be)/.test(line)), outcome.err.join('\n')).toBe(true);
        expect(outcome.out).toEqual([]);
        expect(await snapshot(home)).toEqual(before);
      });
    });
  }

  it('leaves the package that stands in the folder', () =>
    exampleProject().then((project) => withProject(project, async (home) => {
      expect((await run(home, WORDS)).code).toBe(0);
      const before = await snapshot(join(home, 'out'));
      project['units'] = 'ft';
      await withProject(project, async (other) => {
        expect((await run(other, ['yard.penwright.json', '--out', join(home, 'out')])).code).toBe(2);
      });
      expect(await snapshot(join(home, 'out'))).toEqual(before);
    })));
});

describe('what is no project', () => {
  for (const [name, content, told] of UNREADABLE) {
    it(`(${name}) ends in 2 with what it is`, () =>
      withProject(content, async (home) => {
        const outcome = await run(home, WORDS);
        expect(outcome.code).toBe(2);
        expect(outcome.err.join('\n')).toMatch(told);
        expect(await readdir(home)).toEqual(['yard.penwright.json']);
      }));
  }

  it('(a missing file, a folder, a link to nothing, a file too large) ends in 2 with what it is', () =>
    withProject('', async (home) => {
      await mkdir(join(home, 'folder'));
      await symlink('nowhere', join(home, 'link'));
      expect((await run(home, ['no.json', '--out', 'out'])).err).toEqual([expect.stringMatching(/^no\.json: is not there/)]);
      expect((await run(home, ['folder', '--out', 'out'])).err).toEqual([expect.stringMatching(/^folder: is a folder/)]);
      expect((await run(home, ['link', '--out', 'out'])).err).toEqual([expect.stringMatching(/^link: cannot be read \(something on the way to it is gone, ENOENT\)/)]);
      const disk = { ...nodeDisk, read: () => Promise.resolve(new Uint8Array(17 * 1024 * 1024)) };
      const large = await run(home, WORDS, { disk });
      expect(large.err).toEqual([expect.stringMatching(/^yard\.penwright\.json: is over 16 MB/)]);
      expect(large.code).toBe(2);
    }));

  it('(a file that may not be read) ends in 2 with why', () =>
    withProject('{}', async (home) => {
      const disk = { ...nodeDisk, read: () => Promise.reject(Object.assign(new Error('no'), { code: 'EACCES' })) };
      const outcome = await run(home, WORDS, { disk });
      expect(outcome.code).toBe(2);
      expect(outcome.err).toEqual([expect.stringMatching(/^yard\.penwright\.json: cannot be read \(no permission, EACCES\)/)]);
    }));
});
