import { rm, writeFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readOptions } from '../../electron/command/options.ts';
import { calledFrom, HOME } from '../../electron/command/terminal-io.ts';
import { printRefusal } from '../../electron/disk/index.ts';
import { snapshot } from '../disk/support/packages.ts';
import { exampleProject, run, withProject, WORDS } from './support/run.ts';

const told = (...words: string[]): readonly string[] => {
  const asked = readOptions(words);
  return asked.kind === 'wrong' ? asked.refusals.map(printRefusal) : [asked.kind];
};

describe('the words after the command', () => {
  it('are read in any order, values apart or behind an equals sign', () => {
    expect(readOptions(['--strict', '--out=some folder', 'a.json', '--units', 'mm', '--keep-marks', '--only', 'report, schedules'])).toEqual({
      kind: 'options',
      options: { project: 'a.json', out: 'some folder', only: ['schedules', 'report'], units: 'mm', strict: true, keepMarks: true, since: null },
    });
    expect(readOptions(['a.json', '--out', 'b'])).toEqual({
      kind: 'options',
      options: { project: 'a.json', out: 'b', only: null, units: null, strict: false, keepMarks: false, since: null },
    });
    expect(readOptions(['a.json', '--since', 'old.json', '--out', 'b'])).toMatchObject({ options: { project: 'a.json', since: 'old.json' } });
    expect(readOptions(['--out', 'b', '--', '--odd.json'])).toMatchObject({ kind: 'options', options: { project: '--odd.json' } });
  });

  it('are all told where they are wrong, with what is allowed', () => {
    expect(told()).toEqual([expect.stringMatching(/^PROJECT: is not given; allowed is/), expect.stringMatching(/^--out: is not given; allowed is/)]);
    expect(told('a', '--out')).toEqual([expect.stringMatching(/^--out: has no value; allowed is the path of a folder/)]);
    expect(told('a', '--out', '--strict')).toEqual([expect.stringMatching(/^--out: has no value/)]);
    expect(told('a', '--out=')).toEqual([expect.stringMatching(/^--out: has no value/)]);
    expect(told('a', '--out', 'b', '--since')).toEqual(['--since: has no value; allowed is the path of a project file']);
    expect(told('a', '--out', 'b', '--units')).toEqual(['--units: has no value; allowed is in or mm']);
    expect(told('a', '--out', 'b', '--units', 'cm')).toEqual(['--units: "cm" are not units; allowed is in or mm']);
    expect(told('a', '--out', 'b', '--units', 'in', '--units', 'mm')).toEqual([expect.stringMatching(/^--units: is given more than once/)]);
    expect(told('a', 'b', '--out', 'c')).toEqual([expect.stringMatching(/^b: is one argument too many/)]);
    expect(told('a', '--out', 'b', '--only', 'drawing,,report')).toEqual([
      expect.stringMatching(/^--only: "drawing" is not a kind of file; allowed is drawings, plates,/),
      expect.stringMatching(/^--only: "" is not a kind of file/),
    ]);
    expect(told('a', '--out', 'b', '--force')).toEqual([expect.stringMatching(/^--force: is not an option of this command/)]);
    expect(told('a', '--out', 'b', '-x', '--strict=1')).toEqual([expect.stringMatching(/^-x: is not/), expect.stringMatching(/^--strict=1: is not/)]);
    expect(told('a\u001b[2J', 'b', '--out', 'c', 'd\ne')).toEqual([expect.stringMatching(/^b: /), expect.stringMatching(/^d\\u000ae: /)]);
  });

  it('end in 2 where they are wrong, and in 0 where help is asked for', () =>
    withProject('{}', async (home) => {
      expect(await run(home, ['yard.penwright.json'])).toMatchObject({ code: 2, out: [] });
      const help = await run(home, ['--help']);
      expect(help).toMatchObject({ code: 0, err: [] });
      for (const word of ['--out', '--only', '--units', '--since', '--strict', '--keep-marks', 'Exit codes']) expect(help.out.join('\n')).toContain(word);
    }));
});

describe('an earlier issue', () => {
  it('that is missing or faulty ends in 2, told as the earlier one, with nothing written', async () => {
    const project = await exampleProject();
    await withProject(project, async (home) => {
      const before = await snapshot(home);
      const missing = await run(home, [...WORDS, '--since', 'gone.json']);
      expect(missing).toMatchObject({ code: 2, out: [] });
      expect(missing.err).toEqual([expect.stringMatching(/^gone\.json: is not there; allowed is/)]);
      await writeFile(join(home, 'old.json'), JSON.stringify({ ...project, units: 'ft' }));
      const faulty = await run(home, [...WORDS, '--since', 'old.json']);
      expect(faulty).toMatchObject({ code: 2, out: [] });
      expect(faulty.err).toEqual([expect.stringMatching(/^the earlier issue, units: .*allowed is/)]);
      await rm(join(home, 'old.json'));
      expect(await snapshot(home)).toEqual(before);
    });
  });
});

describe('the folder that the command is called from', () => {
  it('is where npm was called, for a script that npm runs in the program\'s own folder', () => {
    expect(calledFrom(HOME, { INIT_CWD: resolve('/yards/north') })).toBe(resolve('/yards/north'));
  });

  it('is the process\'s own where npm did not run it there', () => {
    expect(calledFrom(resolve('/yards'), { INIT_CWD: resolve('/elsewhere') })).toBe(resolve('/yards'));
    expect(calledFrom(HOME, {})).toBe(HOME);
    expect(calledFrom(HOME, { INIT_CWD: '' })).toBe(HOME);
  });
});
