/** Whole sets through every writer: structure, two readers of ours, two from outside, started once for all files. */
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { type Dimension, type Sheet, strokesOf } from '../../core/drafting/primitives.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts } from '../../core/parts/index.ts';
import { writeDxf, writePdf, writeSvg } from '../../core/writers/index.ts';
import { makePdf } from '../../electron/pdf/index.ts';
import { drawingFont as font, drawProject, type DrawnSet, drawSound, EXAMPLES, exampleText } from '../support/drawn.ts';
import { outside, PYTHON, run } from '../support/outside.ts';
import { randomProjects } from '../support/random-brief.ts';
import { inFolder } from '../support/temporary.ts';
import { dxfBreaches } from '../writers/dxf-structure.ts';
import { byDxf, byDxfParser, expected, type Seen, unitOf } from '../writers/seen.ts';

/** Coordinates are written to 1e-10 of a unit and read as doubles. */
const CLOSE = 1e-8;
/** OGR's text output takes a run of nines or zeros for noise and rounds it away: 8821.999999954 comes back as 8822. */
const OGR_CLOSE = 1e-6;
const SEED = 61;
const WANTED = 20;

/** Larger facilities are left to the other tests of drawings: each of their files is read four times over here. */
const MOST_PIECES = 200;

/** Of a project that has no fault; 0 where it has: it is drawn in a moment. */
function pieceCount(text: string): number {
  const read = readBrief(text);
  const laid = read.ok ? layOut(read.brief) : null;
  const made = read.ok && laid?.ok === true ? makeParts(read.brief, laid.layout) : null;
  return made?.ok === true ? made.parts.pieces.length : 0;
}

/** The first random projects that can be drawn and are no larger than that. */
function randomSets(): (readonly [string, DrawnSet])[] {
  const found: (readonly [string, DrawnSet])[] = [];
  for (const [index, project] of randomProjects(SEED, 12 * WANTED).entries()) {
    if (found.length === WANTED) break;
    const text = JSON.stringify(project);
    if (pieceCount(text) > MOST_PIECES) continue;
    const outcome = drawProject(text);
    if (outcome.drawn) found.push([`seed ${String(SEED)} project ${String(index)}`, outcome.set]);
  }
  return found;
}

const sets: readonly (readonly [string, DrawnSet])[] = [...EXAMPLES.map((name) => [name, drawSound(exampleText(name))] as const), ...randomSets()];
const written = sets.flatMap(([name, set]) => set.sheets.map((sheet) => ({ name: `${name} ${sheet.number}`, sheet, text: writeDxf(sheet, font) })));

const realDimensions = (sheet: Sheet): Dimension[] => sheet.primitives.filter((item) => item.kind === 'dimension').filter((item) => item.measure !== 'arc');
const seenOf = (primitives: Sheet['primitives'], sheet: Sheet): Omit<Seen, 'text'>[] =>
  strokesOf(primitives).map((stroke) => expected(stroke, unitOf(sheet))).filter((item) => item !== null);
const modelOf = (sheet: Sheet): Omit<Seen, 'text'>[] => seenOf(sheet.primitives.filter((item) => item.kind !== 'dimension' || item.measure === 'arc'), sheet);

/** The first way in which what was read is not what was drawn; the polyline's width is left out, which one reader does not give. */
function differs(read: readonly Omit<Seen, 'text'>[], drawn: readonly Omit<Seen, 'text'>[], close = CLOSE): string | null {
  if (read.length !== drawn.length) return `${String(read.length)} entities read, ${String(drawn.length)} drawn`;
  for (const [i, { type, layer, figures }] of drawn.entries()) {
    const got = read[i]!;
    const kept = type === 'LWPOLYLINE' ? figures.slice(0, -1) : figures;
    const far = (figure: number, n: number): boolean => !(Math.abs((got.figures[n] ?? NaN) - figure) < close);
    if (got.type !== type || got.layer !== layer || kept.some(far)) return `entity ${String(i)}: ${type} ${layer} ${kept.join(' ')}, read ${got.type} ${got.layer} ${got.figures.join(' ')}`;
  }
  return null;
}

describe('whole sets', () => {
  it('are as many as were asked for', () => {
    expect(sets).toHaveLength(EXAMPLES.length + WANTED);
  });

  it('make DXF of sound structure', () => {
    expect(written.flatMap(({ name, text }) => dxfBreaches(text).slice(0, 3).map((breach) => `${name}: ${breach}`))).toEqual([]);
  });

  it.each([['dxf-parser', byDxfParser], ['dxf', byDxf]] as const)('hold what was drawn, read by %s', (_, reader) => {
    const wrong = written.flatMap(({ name, sheet, text }) => {
      const read = reader(text);
      const dimensions = realDimensions(sheet);
      const found = [
        differs(read.model, modelOf(sheet)),
        read.dimensions.length === dimensions.length ? null : `${String(read.dimensions.length)} dimensions read, ${String(dimensions.length)} drawn`,
        ...dimensions.map((item, k) => differs(read.dimensions[k] ?? [], seenOf(item.strokes, sheet))),
      ];
      return found.filter((one) => one !== null).slice(0, 3).map((one) => `${name}: ${one}`);
    });
    expect(wrong).toEqual([]);
  });

  it('make SVG with every text that is drawn', () => {
    const escaped = (text: string): string => text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
    const plain = (svg: string): string => svg.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&apos;', "'");
    const wrong = written.flatMap(({ name, sheet }) => {
      const svg = plain(writeSvg(sheet, font));
      const lost = strokesOf(sheet.primitives).filter((item) => item.kind === 'text').filter((item) => !svg.includes(escaped(item.text)));
      const sound = svg.includes('<svg') && svg.trimEnd().endsWith('</svg>') && !/NaN|undefined|Infinity/.test(svg.replace(/base64,[^)'"]*/g, ''));
      return [...lost.slice(0, 2).map((item) => `${name}: no "${item.text}"`), ...(sound ? [] : [`${name}: not a whole SVG`])];
    });
    expect(wrong).toEqual([]);
  });

  it('make a PDF of a page for each drawing', async () => {
    for (const [name, set] of sets) {
      const info = { title: set.brief.title, subject: '', author: '', creator: '', date: null };
      const bytes = await writePdf(set.sheets, font, info, makePdf);
      const text = Buffer.from(bytes).toString('latin1');
      expect([name, text.startsWith('%PDF-'), text.trimEnd().endsWith('%%EOF')]).toEqual([name, true, true]);
      expect([name, [...text.matchAll(/\/Type \/Page\b(?!s)/g)].length]).toEqual([name, set.sheets.length]);
    }
  });
});

const files = Object.fromEntries(written.map(({ text }, i) => [`${String(i)}.dxf`, text]));
const reader = (name: string): string => fileURLToPath(new URL(`../readers/${name}`, import.meta.url));
const readBy = (script: string): Promise<unknown> => inFolder(files, (folder) => JSON.parse(run(PYTHON, [reader(script), folder])) as unknown);

interface EzdxfFile {
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly entities: readonly Seen[];
  readonly dimensions: readonly { readonly measured: number; readonly factor: number }[];
}

describe.skipIf(!outside('ezdxf'))('whole sets read by ezdxf', () => {
  let read: Record<string, EzdxfFile>;
  beforeAll(async () => { read = (await readBy('read_ezdxf.py')) as Record<string, EzdxfFile>; }, 600_000);

  it('need no mending, hold what was drawn, and measure the steel', () => {
    const wrong = written.flatMap(({ name, sheet }, i) => {
      const file = read[`${String(i)}.dxf`]!;
      const dimensions = realDimensions(sheet);
      const measures = dimensions.filter((item, k) => {
        const { measured, factor } = file.dimensions[k] ?? { measured: NaN, factor: NaN };
        const steel = item.measure === 'angle' ? (measured * Math.PI) / 180 : (measured * factor) / (sheet.units === 'mm' ? 25.4 : 1);
        return !(Math.abs(steel - item.value) < 1e-6);
      });
      const found = [...file.errors, ...file.fixes, differs(file.entities, modelOf(sheet)), ...measures.map((item) => `${item.measure} ${item.text} measures otherwise`)];
      return found.filter((one) => one !== null).slice(0, 3).map((one) => `${name}: ${one}`);
    });
    expect(wrong).toEqual([]);
  });
});

interface OgrFeature {
  readonly layer: string;
  readonly kind: string;
  readonly coordinates: readonly (readonly number[])[];
}

describe.skipIf(!outside('ogr'))('whole sets read by OGR', () => {
  let read: Record<string, OgrFeature[]>;
  beforeAll(async () => { read = (await readBy('read_ogr.py')) as Record<string, OgrFeature[]>; }, 600_000);

  it('hold every line where it was drawn, and as many of the rest', () => {
    const wrong = written.flatMap(({ name, sheet }, i) => {
      const features = read[`${String(i)}.dxf`] ?? [];
      const drawn = seenOf(sheet.primitives, sheet);
      const kinds = { AcDbArc: 'ARC', AcDbCircle: 'CIRCLE', AcDbTrace: 'SOLID', AcDbText: 'TEXT' } as const;
      const counts = Object.entries(kinds).flatMap(([kind, type]) => {
        const [seen, want] = [features.filter((item) => item.kind === kind).length, drawn.filter((item) => item.type === type).length];
        return seen === want ? [] : [`${String(seen)} of ${type} read, ${String(want)} drawn`];
      });
      const lines = features.filter((item) => item.kind === 'AcDbLine').map(({ layer, coordinates }) => ({ type: 'LINE', layer, figures: coordinates.flatMap((point) => point.slice(0, 2)) }));
      return [...counts, differs(lines, drawn.filter((item) => item.type === 'LINE'), OGR_CLOSE)].filter((one) => one !== null).slice(0, 3).map((one) => `${name}: ${one}`);
    });
    expect(wrong).toEqual([]);
  });
});
