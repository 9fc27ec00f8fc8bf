/** A person's texts stay texts in every form of a package, and nothing else. */
import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import DxfParser from 'dxf-parser';
import Papa from 'papaparse';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { nodeDisk } from '../../electron/disk/index.ts';
import { readTree } from '../../electron/disk/tree.ts';
import { outside, run as runOutside } from '../support/outside.ts';
import { exampleProject, put, run, withProject, WORDS } from './support/run.ts';

const TITLE = '<b>A & B</b> "q" \'s\' = %%c %%d ^J \\U+2205 ]]> 🐂';
const CLIENT = '=HYPERLINK("x") -- <script>alert(1)</script> é ñ';
const SECTION = '=1+1|\' /c calc\'!a0';

const project = await exampleProject();
project.title = TITLE;
put(project, ['client'], CLIENT);
put(project, ['revision', 'note'], '@SUM(1) </text></svg> & %%p');
put(project, ['shop', 'sections'], { [SECTION]: { outside: 2.36, wall: 0.15 } });
put(project, ['shop', 'stock', SECTION], ['21 ft']);
put(project, ['fences', 'crowdPen', 'rail'], SECTION);

const files = new Map<string, string>();
let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'penwright-'));
  await withProject(project, async (home) => {
    expect(await run(home, ['yard.penwright.json', '--out', join(folder, 'out')])).toMatchObject({ code: 0, err: [] });
  });
  for (const file of (await readTree(nodeDisk, join(folder, 'out'))).files) files.set(file, await readFile(join(folder, 'out', file), 'latin1'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

const named = (ending: string): (readonly [string, string])[] => [...files].filter(([path]) => path.endsWith(ending));
const utf8 = (path: string): string => Buffer.from(files.get(path) ?? '', 'latin1').toString('utf8');

/** The XML 1.0 entities, undone. */
const plainXml = (text: string): string =>
  text.replace(/&(lt|gt|quot|apos|amp|#x?[0-9A-Fa-f]+);/g, (_, name: string) =>
    name.startsWith('#') ? String.fromCodePoint(name[1] === 'x' ? parseInt(name.slice(2), 16) : Number(name.slice(1))) : ({ lt: '<', gt: '>', quot: '"', apos: '\'', amp: '&' } as Readonly<Record<string, string>>)[name] ?? '');

/** What the words of a wrapped text come to, spaces aside: a title may stand on several lines. */
const squeezed = (text: string): string => text.replace(/\s+/g, '');

describe('awkward texts in title, client, note and section', () => {
  it('name the project\'s copy with plain letters', () => {
    expect([...files.keys()].filter((path) => path.endsWith('.penwright.json'))).toEqual(['b-a-b-b-q-s-c-d-j-u-2205.penwright.json']);
    for (const path of files.keys()) expect(path).toMatch(/^[A-Za-z0-9 ./-]+$/);
  });

  it('are what they were in the manifest and the project\'s copy', () => {
    expect((JSON.parse(utf8('manifest.json')) as { project: string }).project).toBe(TITLE);
    expect(JSON.parse(utf8('b-a-b-b-q-s-c-d-j-u-2205.penwright.json'))).toMatchObject({ title: TITLE, client: CLIENT });
  });

  it('are texts in every SVG, and no elements', () => {
    const svgs = named('.svg');
    expect(svgs.length).toBeGreaterThan(5);
    for (const [path] of svgs) {
      const svg = utf8(path);
      expect(svg).not.toMatch(/<\/?(b|script|J)[\s>]/);
      expect(svg.match(/<\/svg>/g)).toHaveLength(1);
      const bodies = [...svg.matchAll(/<text[^>]*>([^<]*)<\/text>/g)].map((match) => plainXml(match[1] ?? ''));
      const all = squeezed(bodies.join(' '));
      expect(all, path).toContain(squeezed(TITLE));
      expect(all, path).toContain(squeezed(CLIENT));
      // Outside markup, an ampersand begins an entity and nothing else.
      expect(svg.replace(/&(lt|gt|quot|apos|amp|#x?[0-9A-Fa-f]+);/g, '')).not.toContain('&');
    }
  });

  it('are texts in every DXF: ASCII, one line each, with no code of theirs in force', () => {
    const drawings = named('.dxf').filter(([path]) => path.startsWith('drawings/'));
    expect(drawings.length).toBe(named('.svg').length);
    for (const [path, dxf] of drawings) {
      expect(dxf, path).toMatch(/^[\x20-\x7e\r\n]*$/);
      const texts = dxf.split(/\r?\n/).filter((line) => line.includes('A & B') || line.includes('HYPERLINK'));
      expect(texts.length, path).toBeGreaterThan(0);
      // %%c and %%d of ours stand for a diameter and a degree; a person's are broken up.
      expect(dxf).not.toMatch(/= %%[cd]/);
      expect(dxf).not.toMatch(/\^J/);
      expect(dxf).not.toMatch(/\\U\+2205 ]]/);
      const parsed = new DxfParser().parseSync(dxf);
      expect(parsed?.entities.length, path).toBeGreaterThan(20);
    }
  });

  it('are no formula in any CSV, while figures stay figures', () => {
    const tables = named('.csv');
    expect(tables.length).toBeGreaterThanOrEqual(3);
    for (const [path] of tables) {
      const { data, errors } = Papa.parse<string[]>(utf8(path).trimEnd());
      expect(errors, path).toEqual([]);
      const [header = [], ...rows] = data;
      expect(rows.length, path).toBeGreaterThan(0);
      for (const row of rows) {
        expect(row, path).toHaveLength(header.length);
        for (const cell of row) expect(cell, path).not.toMatch(/^([=@\t\r]|[+-](?![0-9.]))/);
      }
    }
    const pieces = Papa.parse<Record<string, string>>(utf8('schedules/pieces.csv').trimEnd(), { header: true }).data;
    expect(pieces.filter((row) => row['section'] === `'${SECTION}`).length).toBeGreaterThan(3);
    expect(utf8('schedules/stakeout.csv')).toMatch(/,-[0-9.]+,/);
  });

  it('are texts in the findings, whole', () => {
    expect(() => JSON.parse(utf8('report/findings.json')) as unknown).not.toThrow();
    expect(() => JSON.parse(utf8('stations.json')) as unknown).not.toThrow();
  });

  it.skipIf(!outside('poppler'))('are texts in the PDF, as poppler reads them', () => {
    for (const path of ['drawings/all.pdf', 'report/findings.pdf']) {
      const text = squeezed(runOutside('pdftotext', ['-raw', join(folder, 'out', path), '-']));
      expect(text, path).toContain(squeezed(TITLE.replace(' 🐂', '')));
      expect(text, path).toContain(squeezed(CLIENT));
    }
    const info = runOutside('pdfinfo', [join(folder, 'out', 'drawings', 'all.pdf')]);
    expect(info).toContain(TITLE);
    expect(info).toContain(CLIENT);
  });
});

describe('a text with a line break', () => {
  it('is folded to a space in every form', async () => {
    const folded = await exampleProject();
    folded.title = 'Juniper\r\nFlat';
    await withProject(folded, async (home) => {
      expect((await run(home, [...WORDS, '--only', 'drawings'])).code).toBe(0);
      expect(await readFile(join(home, 'out', 'drawings', '101 plan.dxf'), 'latin1')).toContain('Juniper Flat');
      expect((JSON.parse(await readFile(join(home, 'out', 'manifest.json'), 'utf8')) as { project: string }).project).toBe('Juniper Flat');
    });
  });
});
