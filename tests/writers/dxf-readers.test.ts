/** Our DXF as others read it: dxf-parser, dxf, ezdxf with its audit, and OGR, each against the sheet that was written. */
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, test } from 'vitest';
import { type Dimension, type Sheet, LINE_WEIGHT_MM, strokesOf } from '../../core/drafting/primitives.ts';
import { writeDxf } from '../../core/writers/index.ts';
import { PYTHON, outside, run } from '../support/outside.ts';
import { inFolder } from '../support/temporary.ts';
import { dxfBreaches } from './dxf-structure.ts';
import { font, inchSheet, sheets } from './fixtures.ts';
import { type ReadBack, type Seen, byDxf, byDxfParser, expected, unitOf } from './seen.ts';

/** Coordinates are written to 1e-10 of a unit and read as doubles. */
const CLOSE = 1e-8;

const readers = fileURLToPath(new URL('../readers/', import.meta.url));
const files = Object.fromEntries(sheets.map((sheet) => [`${sheet.number}.dxf`, writeDxf(sheet, font)]));
const realDimensions = (sheet: Sheet): Dimension[] => sheet.primitives.filter((item) => item.kind === 'dimension').filter((item) => item.measure !== 'arc');

/** What stands in the model beside the dimensions. */
const modelOf = (sheet: Sheet): Sheet['primitives'] => sheet.primitives.filter((item) => item.kind !== 'dimension' || item.measure === 'arc');
const seenOf = (primitives: Sheet['primitives'], sheet: Sheet): Omit<Seen, 'text'>[] =>
  strokesOf(primitives).map((stroke) => expected(stroke, unitOf(sheet))).filter((item) => item !== null);

/** Holds what was read to what was drawn: kinds and layers the same, in the same order, every figure close. */
function agree(read: readonly Omit<Seen, 'text'>[], drawn: readonly Omit<Seen, 'text'>[]): void {
  expect(read.map((item) => `${item.type} ${item.layer}`)).toEqual(drawn.map((item) => `${item.type} ${item.layer}`));
  read.forEach((item, k) => {
    const want = drawn[k]?.figures ?? [];
    expect(item.figures).toHaveLength(want.length);
    item.figures.forEach((figure, n) => {
      expect(Math.abs(figure - (want[n] ?? NaN)), `${item.type} ${String(k)} figure ${String(n)}`).toBeLessThan(CLOSE);
    });
  });
}

describe.each([['dxf-parser', byDxfParser], ['dxf', byDxf]] as const)('read by %s', (name, reader) => {
  test.each(sheets.map((sheet) => [sheet.number, sheet] as const))('sheet %s holds what was drawn', (_, sheet) => {
    const read: ReadBack = reader(files[`${sheet.number}.dxf`] ?? '');
    const known = (items: Omit<Seen, 'text'>[]): Omit<Seen, 'text'>[] =>
      name === 'dxf' ? items.map((item) => (item.type === 'LWPOLYLINE' ? { ...item, figures: item.figures.slice(0, -1) } : item)) : items;
    agree(read.model, known(seenOf(modelOf(sheet), sheet)));
    const blocks = realDimensions(sheet);
    expect(read.dimensions).toHaveLength(blocks.length);
    blocks.forEach((block, k) => { agree(read.dimensions[k] ?? [], known(seenOf(block.strokes, sheet))); });
    expect(read.units).toBe(sheet.units === 'mm' ? 4 : 1);
  });
});

interface EzdxfFile {
  readonly errors: readonly string[];
  readonly fixes: readonly string[];
  readonly version: string;
  readonly units: number;
  readonly layouts: readonly string[];
  readonly entities: readonly (Seen & { readonly linetype: string; readonly weight: number })[];
  readonly dimensions: readonly { readonly kind: number; readonly measured: number; readonly factor: number; readonly text: string; readonly block: readonly Seen[] }[];
}

describe.skipIf(!outside('ezdxf'))('read by ezdxf', () => {
  let read: Record<string, EzdxfFile>;
  beforeAll(async () => {
    read = await inFolder(files, (folder) => JSON.parse(run(PYTHON, [`${readers}read_ezdxf.py`, folder])) as Record<string, EzdxfFile>);
  });
  const each = test.each(sheets.map((sheet) => [sheet.number, sheet] as const));

  each('sheet %s: its audit finds no error and mends nothing', (number) => {
    const file = read[`${number}.dxf`];
    expect(file).toMatchObject({ errors: [], fixes: [], version: 'AC1015', layouts: ['Model', 'Paper'] });
  });

  each('sheet %s holds what was drawn', (number, sheet) => {
    const file = read[`${number}.dxf`]!;
    agree(file.entities, seenOf(modelOf(sheet), sheet));
    realDimensions(sheet).forEach((block, k) => { agree(file.dimensions[k]?.block ?? [], seenOf(block.strokes, sheet)); });
  });

  each('sheet %s: lines have the dash and the weight of their pen', (number, sheet) => {
    const drawn = strokesOf(modelOf(sheet)).filter((stroke) => 'pen' in stroke);
    const lines = read[`${number}.dxf`]!.entities.filter((item) => ['LINE', 'ARC', 'CIRCLE'].includes(item.type));
    expect(lines.map((item) => `${item.linetype} ${String(item.weight / 100)}`)).toEqual(
      drawn.map(({ pen }) => `${{ solid: 'CONTINUOUS', hidden: 'HIDDEN', center: 'CENTER' }[pen.dash]} ${String(LINE_WEIGHT_MM[pen.weight])}`),
    );
  });

  each('sheet %s: every dimension measures the steel', (number, sheet) => {
    const { dimensions } = read[`${number}.dxf`]!;
    const kinds = { linear: 0, aligned: 1, diameter: 3, radius: 4, angle: 5, arc: -1 };
    expect(dimensions.map((item) => item.kind)).toEqual(realDimensions(sheet).map((item) => kinds[item.measure]));
    realDimensions(sheet).forEach((item, k) => {
      const { measured, factor, text } = dimensions[k]!;
      const steel = item.measure === 'angle' ? measured : measured * factor;
      const want = item.measure === 'angle' ? (item.value * 180) / Math.PI : item.value * (sheet.units === 'mm' ? 25.4 : 1);
      expect(Math.abs(steel - want), `${item.measure} ${item.text}`).toBeLessThan(1e-6);
      expect(text === '').toBe(!item.chained);
    });
  });
});

describe.skipIf(!outside('ezdxf'))('the walker of structure', () => {
  test('finds in a sound file of ezdxf nothing but objects that ours have no use for', () => {
    const breaches = dxfBreaches(run(PYTHON, [`${readers}make_ezdxf.py`]));
    expect(breaches.map((breach) => breach.replace(/^line \d+: /, '').replace(/^[A-Z]+ (?=does)/, ''))).toEqual(Array(breaches.length).fill('does not belong in a drawing of ours'));
    expect(breaches.join()).not.toMatch(/: (LINE|ARC|CIRCLE|SOLID|LWPOLYLINE|TEXT|DICTIONARY|LAYOUT) /);
  });
});

interface OgrFeature {
  readonly layer: string;
  readonly kind: string;
  readonly text?: string | null;
  readonly shape: string;
  readonly coordinates: readonly (readonly number[])[];
}

describe.skipIf(!outside('ogr'))('read by OGR', () => {
  let read: Record<string, OgrFeature[]>;
  beforeAll(async () => {
    read = await inFolder(files, (folder) => JSON.parse(run(PYTHON, [`${readers}read_ogr.py`, folder])) as Record<string, OgrFeature[]>);
  });

  test.each(sheets.map((sheet) => [sheet.number, sheet] as const))('sheet %s: lines where they were drawn, circles and arcs round their centers', (number, sheet) => {
    const features = read[`${number}.dxf`]!;
    const drawn = seenOf(sheet.primitives, sheet);
    const lines = (kind: string): OgrFeature[] => features.filter((item) => item.kind === kind);
    const counts = (type: string): number => drawn.filter((item) => item.type === type).length;
    expect(lines('AcDbArc')).toHaveLength(counts('ARC'));
    expect(lines('AcDbCircle')).toHaveLength(counts('CIRCLE'));
    expect(lines('AcDbTrace')).toHaveLength(counts('SOLID'));
    expect(lines('AcDbText')).toHaveLength(counts('TEXT'));
    agree(
      lines('AcDbLine').map((item) => ({ type: 'LINE', layer: item.layer, figures: item.coordinates.flatMap((point) => point.slice(0, 2)) })),
      drawn.filter((item) => item.type === 'LINE'),
    );
    for (const [type, kind] of [['ARC', 'AcDbArc'], ['CIRCLE', 'AcDbCircle']] as const) {
      drawn.filter((item) => item.type === type).forEach(({ figures: [x = NaN, y = NaN, r = NaN] }, k) => {
        for (const point of lines(kind)[k]!.coordinates) expect(Math.abs(Math.hypot((point[0] ?? NaN) - x, (point[1] ?? NaN) - y) - r)).toBeLessThan(CLOSE * r);
      });
    }
  });

  test('what a person typed is read with no symbol and no control character that was not there', () => {
    const texts = read[`${inchSheet.number}.dxf`]!.map((item) => item.text ?? '');
    expect(texts).toContain('^J ^I ^^ caret^');
    expect(texts.filter((text) => text.includes('is no degree'))[0]).not.toMatch(/[°Ø⌀]/);
  });
});
