import { chmod, readdir, readFile, readlink, rename, stat, symlink, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { nodeDisk } from '../../electron/disk/index.ts';
import { exampleProject, run, SCHEDULES, withProject } from './support/run.ts';

const EXAMPLE = await readFile(new URL('../../shared/examples/juniper-flat.penwright.json', import.meta.url), 'utf8');

interface Marked {
  readonly marks: Record<string, string>;
}

describe('marks kept in the project file', () => {
  it('stand in it as in the package\'s copy, and nothing else has moved', () =>
    withProject(EXAMPLE, async (home) => {
      const path = join(home, 'yard.penwright.json');
      await chmod(path, 0o640);
      expect((await run(home, SCHEDULES)).code).toBe(0);
      expect(await readFile(path, 'utf8')).toBe(EXAMPLE);
      const outcome = await run(home, [...SCHEDULES, '--keep-marks']);
      expect(outcome.code).toBe(0);
      const after = await readFile(path, 'utf8');
      expect(after).toBe(await readFile(join(home, 'out', 'juniper-flat.penwright.json'), 'utf8'));
      const [head = '', tail = ''] = EXAMPLE.split('"marks": {}');
      expect(after.startsWith(`${head}"marks": {`)).toBe(true);
      expect(after.endsWith(`}${tail}`)).toBe(true);
      const marks = (JSON.parse(after) as Marked).marks;
      expect(outcome.out.at(-1)).toBe(`${String(Object.keys(marks).length)} new piece marks written into yard.penwright.json`);
      const pieces = (await readFile(join(home, 'out', 'schedules', 'pieces.csv'), 'utf8')).split('\r\n').slice(1, -1).map((row) => row.split(',')[0]);
      expect(new Set(Object.values(marks))).toEqual(new Set(pieces));
      expect((await stat(path)).mode & 0o777).toBe(0o640);
      expect(await readdir(home)).toEqual(['out', 'yard.penwright.json']);
      const again = await run(home, [...SCHEDULES, '--keep-marks']);
      expect(again.out.at(-1)).toBe('No new piece marks: yard.penwright.json is as it was');
      expect(await readFile(path, 'utf8')).toBe(after);
    }));

  it('keep a byte order mark, Windows line ends, and a link to the file', () =>
    withProject(`\ufeff${EXAMPLE.replaceAll('\n', '\r\n')}`, async (home) => {
      await rename(join(home, 'yard.penwright.json'), join(home, 'real.json'));
      await symlink('real.json', join(home, 'yard.penwright.json'));
      expect((await run(home, [...SCHEDULES, '--keep-marks'])).code).toBe(0);
      expect(await readlink(join(home, 'yard.penwright.json'))).toBe('real.json');
      const after = await readFile(join(home, 'real.json'), 'utf8');
      expect(after.startsWith('\ufeff{\r\n')).toBe(true);
      expect(after.replaceAll('\r\n', '')).not.toMatch(/[\r\n]/);
      expect(Object.keys((JSON.parse(after.slice(1)) as Marked).marks).length).toBeGreaterThan(5);
    }));

  it('are not written over what somebody changed meanwhile, and never half', () =>
    withProject(EXAMPLE, async (home) => {
      const path = join(home, 'yard.penwright.json');
      const changed = EXAMPLE.replace('Juniper Flat', 'Juniper Hill');
      const meanwhile = { ...nodeDisk, writeNew: async (at: string, bytes: Uint8Array, mode?: number) => {
        await nodeDisk.writeNew(at, bytes, mode);
        if (at.endsWith('.penwright-save')) await writeFile(path, changed);
      } };
      const outcome = await run(home, [...SCHEDULES, '--keep-marks'], { disk: meanwhile });
      expect(outcome.code).toBe(3);
      expect(outcome.err).toEqual([expect.stringMatching(/^yard\.penwright\.json: was changed by somebody/)]);
      expect(await readFile(path, 'utf8')).toBe(changed);
      const full = { ...nodeDisk, rename: (from: string, to: string) =>
        from.endsWith('.penwright-save') ? Promise.reject(Object.assign(new Error('no'), { code: 'EROFS' })) : nodeDisk.rename(from, to) };
      expect((await run(home, [...SCHEDULES, '--keep-marks'], { disk: full })).err).toEqual([expect.stringMatching(/read-only, EROFS\); the package is written/)]);
      expect(await readFile(path, 'utf8')).toBe(changed);
      expect(await readdir(home)).toEqual(['out', 'yard.penwright.json']);
    }));

  it('stay with their pieces when the project changes', async () => {
    const project = await exampleProject();
    await withProject(project, async (home) => {
      const path = join(home, 'yard.penwright.json');
      await run(home, [...SCHEDULES, '--keep-marks']);
      const first = JSON.parse(await readFile(path, 'utf8')) as Marked & { crowdPen: { radius: unknown } };
      first.crowdPen.radius = '11 ft';
      await writeFile(path, JSON.stringify(first));
      await run(home, [...SCHEDULES, '--keep-marks']);
      const second = (JSON.parse(await readFile(path, 'utf8')) as Marked).marks;
      expect(Object.keys(second).length).toBeGreaterThan(Object.keys(first.marks).length);
      for (const [signature, mark] of Object.entries(first.marks)) expect(second[signature]).toBe(mark);
      expect(new Set(Object.values(second)).size).toBe(Object.values(second).length);
    });
  });
});
