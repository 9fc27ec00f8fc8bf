import { existsSync, readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { dirname, join, normalize } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { allFiles, importsOf, parse, ROOT } from './sources.ts';

/** Each folder of the core may import only from itself and from those before it. */
const ORDER = ['base', 'text', 'units', 'steel', 'brief', 'layout', 'parts', 'checks', 'schedules', 'shop', 'drafting', 'drawings', 'board', 'writers', 'package'];

/** Packages that are as pure as the core is, and the folders that use them. */
const PACKAGES: Readonly<Record<string, readonly string[]>> = {
  zod: ['brief', 'package'],
  suncalc: ['checks'],
  'csv-stringify/browser/esm/sync': ['writers'],
  makerjs: ['shop', 'writers'],
};

/** What is wrong with one import of a file of the core, or null. */
export function faultOfImport(file: string, imported: string): string | null {
  const home = file.split('/')[1] ?? '';
  if (!imported.startsWith('.')) {
    if (imported.startsWith('node:') || builtinModules.includes(imported.split('/')[0] ?? '')) return `${file} imports ${imported} of Node`;
    return PACKAGES[imported]?.includes(home) === true ? null : `${file} imports the package ${imported}`;
  }
  const target = normalize(join(dirname(file), imported)).replaceAll('\\', '/');
  if (!target.endsWith('.ts')) return `${file} imports ${imported} without its ending`;
  if (!target.startsWith('core/')) return `${file} imports ${target}, which is outside the core`;
  const from = ORDER.indexOf(home);
  const to = ORDER.indexOf(target.split('/')[1] ?? '');
  return from >= 0 && to >= 0 && to <= from ? null : `${file} imports ${target}, which is not before it`;
}

const sources = allFiles().filter((file) => /\.tsx?$/.test(file));
const core = sources.filter((file) => file.startsWith('core/'));

describe('the order of the folders', () => {
  it('names every folder of the core', () => {
    expect([...new Set(core.map((file) => file.split('/')[1] ?? ''))].filter((folder) => !ORDER.includes(folder))).toEqual([]);
    expect(core.length).toBeGreaterThan(50);
  });

  it('is kept by every import of the core, those of types included', () => {
    const faults = core.flatMap((file) => importsOf(parse(file)).map((imported) => faultOfImport(file, imported)));
    expect(faults.filter((fault) => fault !== null)).toEqual([]);
  });

  it('is told where it is broken', () => {
    const names = (text: string): string[] => importsOf(parse('core/steel/x.ts', text));
    expect(names(`import type { A } from '../brief/types.ts'; export * from './a.ts'; type B = import('../layout/types.ts').C; void import('node:fs');`)).toEqual([
      '../brief/types.ts', './a.ts', '../layout/types.ts', 'node:fs',
    ]);
    expect(faultOfImport('core/steel/x.ts', '../brief/types.ts')).toMatch('not before it');
    expect(faultOfImport('core/steel/x.ts', 'fs/promises')).toMatch('of Node');
    expect(faultOfImport('core/steel/x.ts', 'node:path')).toMatch('of Node');
    expect(faultOfImport('core/steel/x.ts', 'makerjs')).toMatch('the package');
    expect(faultOfImport('core/steel/x.ts', '../../electron/disk/disk.ts')).toMatch('outside the core');
    expect(faultOfImport('core/steel/x.ts', '../units/index')).toMatch('without its ending');
    expect(faultOfImport('core/steel/x.ts', '../units/index.ts')).toBeNull();
  });

  it('leads only to files that are there', () => {
    const lost = sources.flatMap((file) =>
      importsOf(parse(file))
        .filter((imported) => imported.startsWith('.') && !existsSync(join(ROOT, dirname(file), imported.replace(/\?\w+$/, ''))))
        .map((imported) => `${file}: ${imported}`));
    expect(lost).toEqual([]);
  });

  it('never leads from what ships to the tests', () => {
    const back = sources
      .filter((file) => /^(electron|renderer)\//.test(file))
      .flatMap((file) => importsOf(parse(file)).filter((imported) => imported.includes('tests/')));
    expect(back).toEqual([]);
  });

  it('leads from the page to the core, to what the page asks of the machine, and to the PDF library alone', () => {
    const page = sources.filter((file) => file.startsWith('renderer/'));
    expect(page.length).toBeGreaterThan(10);
    const strays = page.flatMap((file) =>
      importsOf(parse(file))
        .filter((imported) => (imported.startsWith('.')
          ? !/^(renderer|core|electron\/bridge|electron\/pdf|electron\/solver|shared)\//.test(normalize(join(dirname(file), imported)).replaceAll('\\', '/'))
          : imported.startsWith('node:') || builtinModules.includes(imported.split('/')[0] ?? '')))
        .map((imported) => `${file}: ${imported}`));
    expect(strays).toEqual([]);
  });

  it('leads from the bridge to the core and zod alone, and from the preload to the bridge and Electron alone', () => {
    const leads = (folder: string): string[] => [...new Set(sources.filter((file) => file.startsWith(folder)).flatMap((file) =>
      importsOf(parse(file)).map((imported) => (imported.startsWith('.') ? normalize(join(dirname(file), imported)).replaceAll('\\', '/').split('/').slice(0, 2).join('/') : imported))))].sort();
    expect(leads('electron/bridge/').filter((target) => !target.startsWith('core/'))).toEqual(['electron/bridge', 'zod']);
    expect(leads('electron/preload/')).toEqual(['electron', 'electron/bridge', 'electron/preload']);
    expect(sources.filter((file) => importsOf(parse(file)).includes('electron') && !/^electron\/(main|preload)\//.test(file))).toEqual([]);
  });

  it('has no circle', () => {
    const next = new Map(core.map((file) => [file, importsOf(parse(file)).filter((name) => name.startsWith('.')).map((name) => normalize(join(dirname(file), name)))]));
    const done = new Set<string>();
    const visit = (file: string, way: readonly string[]): void => {
      if (way.includes(file)) throw new Error(`circle: ${[...way.slice(way.indexOf(file)), file].join(' > ')}`);
      if (done.has(file)) return;
      for (const target of next.get(file) ?? []) visit(target, [...way, file]);
      done.add(file);
    };
    expect(() => { for (const file of core) visit(file, []); }).not.toThrow();
  });
});

/** Names of a browser's or Node's, a clock's, chance's or a place's, none of which the core may know. */
const IMPURE = new Set([
  'window', 'document', 'navigator', 'process', 'Buffer', 'console', 'Date', 'Intl', 'setTimeout', 'setInterval', 'setImmediate', 'queueMicrotask', 'fetch', 'performance',
  'globalThis', 'localStorage', 'crypto', 'random', 'toLocaleString', 'toLocaleUpperCase', 'toLocaleLowerCase', 'localeCompare', 'toLocaleDateString',
]);

function impureNames(source: ts.SourceFile): string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isIdentifier(node) && IMPURE.has(node.text) && !isOwnName(node)) found.push(`${source.fileName}: ${node.text}`);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** A field of ours may bear such a name: in a type, or in an object written out. */
const isOwnName = (node: ts.Identifier): boolean =>
  (ts.isPropertySignature(node.parent) || ts.isPropertyAssignment(node.parent)) && node.parent.name === node;

describe('the core is pure', () => {
  it('by its own settings: no browser, no Node', () => {
    const settings = ts.parseConfigFileTextToJson('tsconfig.json', readFileSync(join(ROOT, 'core/tsconfig.json'), 'utf8')).config as {
      compilerOptions: { lib: string[]; types: string[] };
    };
    expect(settings.compilerOptions.lib).toEqual(['ES2023']);
    expect(settings.compilerOptions.types).toEqual([]);
  });

  it('and knows no clock, chance, place or machine', () => {
    expect(core.flatMap((file) => impureNames(parse(file)))).toEqual([]);
    expect(impureNames(parse('x.ts', 'const a = Math.random() + new Date().getTime(); a.toLocaleString();'))).toEqual(['x.ts: random', 'x.ts: Date', 'x.ts: toLocaleString']);
  });
});
