/** Plates for a table: what is refused, where a mark stands, what a file holds, read back by libraries that are not ours. */
import { fileURLToPath } from 'node:url';
import makerjs from 'makerjs';
import { beforeAll, describe, expect, it } from 'vitest';
import { contourArea, contourBox, contourCurves, flatArea } from '../../core/base/flat-curves.ts';
import { contourPolygon } from '../../core/base/flat-polygon.ts';
import { type Contour, type FlatShape, straightPath } from '../../core/base/flat-shape.ts';
import { markStrokes } from '../../core/shop/plates/mark-place.ts';
import { laidPlates, shopPlates, type ShopPlates } from '../../core/shop/nesting/index.ts';
import { outlineOf, refusalOf, tableModel } from '../../core/shop/plates/index.ts';
import { type Polyline } from '../../core/shop/stroke-text/index.ts';
import { inches, radians } from '../../core/base/quantity.ts';
import { readBrief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts } from '../../core/parts/index.ts';
import { writeTableFile } from '../../core/writers/index.ts';
import { EXAMPLES, exampleText } from '../support/drawn.ts';
import { randomProjects } from '../support/random-brief.ts';
import { outside, PYTHON, run } from '../support/outside.ts';
import { tableBreaches } from '../support/table-breaches.ts';
import { inFolder } from '../support/temporary.ts';
import { byDxf, byDxfParser, type Seen } from '../writers/seen.ts';

const rectangle = (x0: number, y0: number, x1: number, y1: number): Contour => straightPath([{ x: x0, y: y0 }, { x: x1, y: y0 }, { x: x1, y: y1 }, { x: x0, y: y1 }]);
const plain = (outer: Contour, ...holes: Contour[]): FlatShape => ({ outer, holes });
const circle = (x: number, y: number, radius: number): Contour => ({ kind: 'circle', center: { x, y }, radius });
/** A tab: square at one end, half round at the other, a bolt hole in the round's center. */
const TAB = plain({ kind: 'path', corners: [{ x: 0, y: 0, bulge: 0 }, { x: 5, y: 0, bulge: 1 }, { x: 5, y: 3, bulge: 0 }, { x: 0, y: 3, bulge: 0 }] }, circle(5, 1.5, 0.40625));
/** A plate with a quarter round taken out of a corner, and one rounded. */
const NOTCHED = plain({
  kind: 'path',
  corners: [{ x: 0, y: 0, bulge: 0 }, { x: 10, y: 0, bulge: 0 }, { x: 10, y: 4, bulge: -Math.tan(Math.PI / 8) }, { x: 8, y: 6, bulge: 0 }, { x: 2, y: 6, bulge: Math.tan(Math.PI / 8) }, { x: 0, y: 4, bulge: 0 }],
}, rectangle(3, 1, 4, 5), circle(7, 2, 0.5));

describe('flat outlines', () => {
  it('measure what plane geometry says', () => {
    expect(flatArea(TAB)).toBeCloseTo(5 * 3 + (Math.PI * 1.5 ** 2) / 2 - Math.PI * 0.40625 ** 2, 12);
    expect(contourArea(NOTCHED.outer)).toBeCloseTo(10 * 6 - (Math.PI * 4) / 4 - (4 - (Math.PI * 4) / 4), 12);
    expect(contourBox(TAB.outer)).toEqual({ left: 0, right: 6.5, low: 0, high: 3 });
    const [, arc] = contourCurves(TAB.outer);
    expect(arc).toMatchObject({ kind: 'arc', radius: 1.5, center: { x: 5, y: 1.5 } });
  });

  it('as polygons hold the metal, or lie in it', () => {
    for (const contour of [TAB.outer, NOTCHED.outer, TAB.holes[0]!]) {
      const area = (side: 'around' | 'within'): number => contourArea(straightPath(contourPolygon(contour, side)));
      expect(area('around')).toBeGreaterThan(contourArea(contour));
      expect(area('within')).toBeLessThan(contourArea(contour));
      expect(area('around') / area('within')).toBeLessThan(1.006);
    }
  });
});

describe('a plate that a table could not cut', () => {
  it.each([
    ['not-finite', plain(straightPath([{ x: 0, y: 0 }, { x: NaN, y: 0 }, { x: 1, y: 1 }]))],
    ['zero-length', plain(straightPath([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 0 }, { x: 4, y: 4 }]))],
    ['zero-length', plain(rectangle(0, 0, 4, 4), circle(2, 2, 0))],
    ['twice', plain(rectangle(0, 0, 4, 4), circle(2, 2, 1), circle(2, 2, 1))],
    ['twice', plain(straightPath([{ x: 0, y: 0 }, { x: 4, y: 0 }]))],
    ['crossing', plain(straightPath([{ x: 0, y: 0 }, { x: 4, y: 4 }, { x: 4, y: 0 }, { x: 0, y: 4 }]))],
    ['crossing', plain(straightPath([{ x: 0, y: 0 }, { x: 4, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 3 }]))],
    ['crossing', plain(rectangle(0, 0, 4, 4), circle(4, 2, 1))],
    ['hole-outside', plain(rectangle(0, 0, 4, 4), circle(8, 2, 1))],
    ['hole-outside', plain(rectangle(0, 0, 9, 9), circle(4, 4, 3), circle(4, 4, 1))],
  ] as const)('is refused: %s', (reason, shape) => {
    expect(refusalOf(shape)).toBe(reason);
  });

  it('is none of those that it can', () => {
    expect([TAB, NOTCHED, plain(circle(3, 3, 3), circle(3, 3, 1))].map(refusalOf)).toEqual([null, null, null]);
  });
});

describe('a mark on a plate', () => {
  it('stands in the metal, clear of edges and holes, smaller where there is less room', () => {
    const tall = (shape: FlatShape, wide: number, high: number): number => {
      const ys = (markStrokes('S12', shape, wide, high) ?? []).flat().map(({ y }) => y);
      return Math.max(...ys) - Math.min(...ys);
    };
    expect(tall(plain(rectangle(0, 0, 40, 20)), 40, 20)).toBeCloseTo(1, 9);
    expect(tall(plain(rectangle(0, 0, 40, 0.8)), 40, 0.8)).toBeCloseTo(0.5, 9);
    // A hole where the middle is: the mark stands beside it.
    const holed = plain(rectangle(0, 0, 20, 10), circle(10, 5, 3));
    const points = markStrokes('S12', holed, 20, 10)!.flat();
    expect(Math.min(...points.map(({ x, y }) => Math.hypot(x - 10, y - 5)))).toBeGreaterThan(3 + 0.1);
    for (const { x, y } of points) expect(x > 0.1 && x < 19.9 && y > 0.1 && y < 9.9).toBe(true);
  });

  it('is left out where nothing holds it', () => {
    expect(markStrokes('S12', plain(rectangle(0, 0, 0.5, 4)), 0.5, 4)).toBeNull();
    expect(markStrokes('S12', plain(rectangle(0, 0, 4, 4), circle(2, 2, 1.97)), 4, 4)).toBeNull();
  });
});

it('a skin between sloping edges is a parallelogram with the area of its piece', () => {
  const slope = radians(0.3);
  const ends = [{ kind: 'plumb', slope }, { kind: 'plumb', slope }] as const;
  const shape = outlineOf({ length: inches(50), flatHeight: inches(30), ends })!;
  expect(flatArea(shape)).toBeCloseTo(1500, 9);
  const [a, b, c, d] = shape.outer.kind === 'path' ? shape.outer.corners : [];
  // Its ends are plumb once its edges lie on the slope.
  expect(Math.atan2(c!.y - b!.y, c!.x - b!.x) + slope).toBeCloseTo(Math.PI / 2, 12);
  expect(Math.hypot(d!.x - a!.x, d!.y - a!.y)).toBeCloseTo(30 / Math.cos(slope), 12);
});

/** What the table cuts of a project; null where it has faults. */
function shopOf(text: string): ShopPlates | null {
  const read = readBrief(text);
  const laid = read.ok ? layOut(read.brief) : null;
  const made = read.ok && laid?.ok === true ? makeParts(read.brief, laid.layout) : null;
  return read.ok && made?.ok === true ? shopPlates(read.brief, made.parts) : null;
}

interface TableFile {
  readonly name: string;
  readonly shapes: readonly FlatShape[];
  readonly etch: readonly Polyline[];
}

/** Every plate, and every sheet of another picture. */
const filesOf = (name: string, shop: ShopPlates): readonly TableFile[] => [
  ...shop.plates.map(({ mark, shape, etch }) => ({ name: `${name} ${mark}`, shapes: [shape], etch: etch ?? [] })),
  ...shop.nests.flatMap(({ sheets }) => sheets.map(({ names, parts }) => {
    const laid = laidPlates(shop.plates, parts);
    return { name: `${name} ${names[0]!}`, shapes: laid.map(({ shape }) => shape), etch: laid.flatMap(({ etch }) => etch) };
  })),
];

const examples = EXAMPLES.map((name) => ({ name, shop: shopOf(exampleText(name))! }));
const files: readonly TableFile[] = [
  ...[TAB, NOTCHED].map((shape, i) => ({ name: `own ${String(i)}`, shapes: [shape], etch: markStrokes('G1', shape, contourBox(shape.outer).right, contourBox(shape.outer).high) ?? [] })),
  ...examples.flatMap(({ name, shop }) => filesOf(name, shop)),
];
const written = files.map((file) => ({ ...file, model: tableModel(file.shapes, file.etch), text: writeTableFile(tableModel(file.shapes, file.etch), 'in') }));

/** What was drawn, from the shapes alone. */
const drawn = (shapes: readonly FlatShape[]): { readonly parts: number; readonly pierces: number } =>
  ({ parts: shapes.length, pierces: shapes.reduce((sum, { holes }) => sum + 1 + holes.length, 0) });

/** What does not hold of what the table cuts: each plate fit, all of them on sheets, each file as the contract asks. */
const shopBreaches = (name: string, shop: ShopPlates): readonly string[] => [
  ...shop.plates.flatMap(({ mark, refusal }) => (refusal === null ? [] : [`${name} ${mark}: ${refusal}`])),
  ...shop.plates.flatMap(({ mark, quantity }) => {
    const on = shop.nests.flatMap(({ sheets }) => sheets).reduce((sum, { count, parts }) => sum + count * parts.filter(({ id }) => id === mark).length, 0);
    return on === quantity || shop.nests.some(({ left }) => left.some(({ id }) => id === mark)) ? [] : [`${name} ${mark}: ${String(on)} on sheets, ${String(quantity)} wanted`];
  }),
  ...filesOf(name, shop).flatMap(({ name: file, shapes, etch }) => tableBreaches(writeTableFile(tableModel(shapes, etch), 'in'), drawn(shapes)).map((breach) => `${file}: ${breach}`)),
];
const close = (a: readonly Seen[], b: readonly Seen[], within: number): boolean =>
  a.length === b.length && a.every((one, i) => one.type === b[i]!.type && one.figures.every((figure, n) => Math.abs(figure - b[i]!.figures[n]!) <= within));

describe('a file for the table', () => {
  it('holds closed outlines alone, arcs as arcs, holes inside', () => {
    expect(written.slice(0, 2).flatMap(({ name, text, shapes }) => tableBreaches(text, drawn(shapes)).map((breach) => `${name}: ${breach}`))).toEqual([]);
    expect(examples.flatMap(({ name, shop }) => shopBreaches(name, shop))).toEqual([]);
    const types = byDxfParser(written[1]!.text).model.filter(({ layer }) => layer === 'CUT').map(({ type }) => type);
    expect(types.toSorted()).toEqual([...Array<string>(2).fill('ARC'), 'CIRCLE', ...Array<string>(8).fill('LINE')]);
  });

  it('is read alike by two libraries, and as makerjs itself would write it', () => {
    for (const { name, model, text } of written) {
      const read = byDxfParser(text).model;
      expect([name, close(byDxf(text).model, read, 1e-9)]).toEqual([name, true]);
      // It writes seven decimals.
      const theirs = byDxfParser(makerjs.exporter.toDXF(model, { units: 'inch' })).model;
      expect([name, close(theirs, read, 1e-7)]).toEqual([name, true]);
    }
  });

  it('is full size in millimeters too', () => {
    const { shapes, etch } = files[0]!;
    const figures = (units: 'in' | 'mm'): readonly number[] => byDxf(writeTableFile(tableModel(shapes, etch), units)).model.filter(({ type }) => type === 'LINE').flatMap((one) => one.figures);
    const [small, large] = [figures('in'), figures('mm')];
    expect(large.every((value, i) => Math.abs(value - small[i]! * 25.4) < 1e-8)).toBe(true);
  });

  it('refuses a layer that is not the table\'s', () => {
    const model = { paths: { a: { ...new makerjs.paths.Line([0, 0], [1, 0]), layer: 'NOTES' } } };
    expect(() => writeTableFile(model, 'in')).toThrow(/NOTES/);
  });
});

const shops = [...randomProjects(1502, 10)].map((project) => shopOf(JSON.stringify(project))).filter((shop) => shop !== null);

describe('random projects', () => {
  it('are cut from sheets, every plate and every sheet as a table asks', () => {
    expect(shops.length).toBeGreaterThanOrEqual(7);
    expect(shops.flatMap((shop, i) => shopBreaches(`project ${String(i)}`, shop)).slice(0, 10)).toEqual([]);
  }, 300_000);
});

/** Random projects whose plates and sheets an outside reader is shown. */
const RANDOM_READ = 3;
const reader = fileURLToPath(new URL('../readers/read_ezdxf.py', import.meta.url));

describe.skipIf(!outside('ezdxf'))('files for the table read by ezdxf', () => {
  let read: Record<string, { readonly errors: readonly string[]; readonly fixes: readonly string[]; readonly version: string; readonly units: number; readonly entities: readonly Seen[] }>;
  // Of the random projects the sheets of a few, and with them the plates that lie on them.
  const random = shops.slice(0, RANDOM_READ).flatMap((shop, i) => filesOf(`project ${String(i)}`, shop)).map((file) => ({ ...file, text: writeTableFile(tableModel(file.shapes, file.etch), 'in') }));
  const all = [...written, ...random];
  beforeAll(async () => {
    const files = Object.fromEntries(all.map(({ text }, i) => [`${String(i)}.dxf`, text]));
    read = await inFolder(files, (folder) => JSON.parse(run(PYTHON, [reader, folder])) as typeof read);
  }, 120_000);

  it('need no mending and hold what the other readers see', () => {
    expect(random.some(({ shapes }) => shapes.length > 1)).toBe(true);
    for (const [i, { name, text }] of all.entries()) {
      const { errors, fixes, version, units, entities } = read[`${String(i)}.dxf`]!;
      expect([name, errors, fixes, version, units]).toEqual([name, [], [], 'AC1009', 1]);
      expect([name, close(entities, byDxf(text).model, 1e-9)]).toEqual([name, true]);
    }
  });
});
