import { describe, expect, it } from 'vitest';
import { allFiles, readSource } from './sources.ts';

const files = allFiles();
const sources = files.filter((file) => /\.tsx?$/.test(file));
const lines = (file: string): number => readSource(file).split('\n').length - 1;

/** Figures copied beside their source, which no one reads from top to bottom. */
const isDataTable = (file: string): boolean => /\/(tables|data)\//.test(file);

/** Written in pieces, so that this file does not hold what it looks for. */
const word = (...parts: string[]): RegExp => new RegExp(parts.join(''), 'i');

const binary = /\.(ttf|png|pdf|ico|icns)$/;
const texts = files.filter((file) => !binary.test(file));

const hits = (pattern: RegExp, among: readonly string[]): string[] =>
  among.flatMap((file) =>
    readSource(file).split('\n').flatMap((line, index) => (pattern.test(line) ? [`${file}:${String(index + 1)}: ${line.trim().slice(0, 120)}`] : [])));

describe('files are short', () => {
  it('none over 400 lines but tables of figures', () => {
    expect(sources.filter((file) => !isDataTable(file) && lines(file) > 400)).toEqual([]);
  });

  it('and the middle one under 100', () => {
    const lengths = sources.map(lines).sort((a, b) => a - b);
    expect(lengths[Math.floor(lengths.length / 2)]).toBeLessThan(100);
  });
});

describe('no file speaks of anything but this project', () => {
  it('not of a folder of one machine', () => {
    const path = new RegExp(`(^|[^A-Za-z0-9_.~-])/(${['work', 'home', 'root', 'Users', 'tmp'].join('|')})/`);
    expect(path.test(['', 'home', 'someone', 'x'].join('/'))).toBe(true);
    expect(hits(path, texts.filter((file) => file !== 'package-lock.json'))).toEqual([]);
  });

  it('not of a registry: the lock file names packages, versions and digests', () => {
    const lock = JSON.parse(readSource('package-lock.json')) as { packages: Record<string, { resolved?: string; version?: string; integrity?: string }> };
    const entries = Object.entries(lock.packages).filter(([name]) => name !== '');
    expect(entries.length).toBeGreaterThan(50);
    expect(entries.filter(([, entry]) => entry.resolved !== undefined).map(([name]) => name)).toEqual([]);
    expect(entries.filter(([, entry]) => entry.integrity === undefined).map(([name]) => name)).toEqual([]);
    expect(hits(word('regis', 'try\\.|npm', 'js\\.org|verdac', 'cio'), ['package-lock.json', '.npmrc', 'package.json', '.ci/run'])).toEqual([]);
  });

  it('and every package is asked for by its exact version', () => {
    const own = JSON.parse(readSource('package.json')) as { dependencies: Record<string, string>; devDependencies: Record<string, string> };
    expect(Object.entries({ ...own.dependencies, ...own.devDependencies }).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  });
});

describe('nothing is left undone in silence', () => {
  it('no check is switched off and no test is set aside', () => {
    const off = word('eslint', '-disable|@ts', '-ignore|@ts', '-expect-error|@ts', '-nocheck|\\bTO', 'DO\\b|\\bFIX', 'ME\\b|\\b(it|test|describe)\\.(on', 'ly|to', 'do|fa', 'ils)\\b');
    expect(hits(off, sources)).toEqual([]);
  });

  it('and no type is thrown away', () => {
    expect(hits(word('(:|<|\\bas) a', 'ny\\b[^a-z ]'), sources)).toEqual([]);
  });
});
