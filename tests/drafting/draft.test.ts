/** Small drawings drafted whole; the checker of drawings must find no breach in any. */
import { expect, test } from 'vitest';
import { sheetPoint, viewPoint } from '../../core/base/points.ts';
import { inches, radians } from '../../core/base/quantity.ts';
import { draft } from '../../core/drafting/draft.ts';
import { type DimensionSpec } from '../../core/drafting/model.ts';
import { PENS } from '../../core/drafting/kit.ts';
import { type Dimension } from '../../core/drafting/primitives.ts';
import { columnWidths, rowsIn, tableHeight, wrapLastColumn } from '../../core/drafting/table.ts';
import { bandWidth } from '../../core/drafting/band.ts';
import { type Sample, block, box, breachesOf, font, kitOf, ring, sampleDrawing, steelRoom } from './sample.ts';

const papers: readonly Sample[] = [{}, { paper: 'ANSI D', units: 'mm' }, { paper: 'ISO A3', units: 'mm' }, { paper: 'ANSI C' }];

function drafted(sample: Sample) {
  const result = draft(font, block(sample.units), sampleDrawing(sample));
  expect(breachesOf(result.sheet)).toEqual([]);
  const dimensions = result.sheet.primitives.filter((item): item is Dimension => item.kind === 'dimension');
  const callouts = result.sheet.primitives.filter((item) => item.kind === 'callout');
  return { ...result, dimensions, callouts };
}

test.each(papers)('straight dimensions at odd angles on %o', (base) => {
  for (let turn = 0.13; turn < 6.28; turn += 0.37) {
    for (const size of [97.3125, 31.7, 9.1, 2.05]) {
      const from = viewPoint(110, 55);
      const to = viewPoint(110 + size * Math.cos(turn), 55 + size * Math.sin(turn) * 0.5);
      for (const spec of [
        { measure: 'aligned', required: true, from, to, offsets: [0.35, -0.35] },
        { measure: 'linear', along: 'x', required: true, from, to, offsets: [0.5, -0.5], prefix: 'clear' },
        { measure: 'linear', along: 'y', required: true, from, to, offsets: [0.5, -0.5], decimal: true },
      ] as const satisfies readonly DimensionSpec[]) {
        const { dimensions, unplaced } = drafted({ ...base, view: { dimensions: [spec] } });
        expect(unplaced).toEqual([]);
        expect(dimensions).toHaveLength(1);
      }
    }
  }
});

test.each(papers)('round dimensions at odd angles on %o', (base) => {
  for (let turn = 0.11; turn < 6.28; turn += 0.53) {
    for (const radius of [27.4, 3.0625]) {
      for (const sweep of [0.12, 0.9, 2.7]) {
        const center = viewPoint(100, 55);
        const round = { required: true, center } as const;
        const specs: readonly DimensionSpec[] = [
          { ...round, measure: 'radius', radius: inches(radius), angles: [radians(turn)], decimal: true },
          { ...round, measure: 'diameter', radius: inches(radius), angles: [radians(turn)] },
          { ...round, measure: 'angle', from: radians(turn), to: radians(turn + sweep), offsets: [0.5, 0.9] },
          { ...round, measure: 'arc', radius: inches(radius), from: radians(turn), to: radians(turn + sweep), offsets: [0.6, 0.9] },
        ];
        for (const spec of specs) {
          const { dimensions, unplaced } = drafted({ ...base, view: { dimensions: [spec] } });
          expect(dimensions.length + unplaced.length).toBe(1);
          if (spec.measure !== 'arc') expect(unplaced).toEqual([]);
        }
      }
    }
  }
});

test('values are true whatever is printed', () => {
  const spec: DimensionSpec = { measure: 'aligned', required: true, from: viewPoint(3, 4), to: viewPoint(39, 19), offsets: [0.4] };
  const { dimensions } = drafted({ view: { dimensions: [spec, { measure: 'arc', required: true, center: viewPoint(110, 20), radius: inches(50), from: radians(0.5), to: radians(1.5), offsets: [0.4] }] } });
  // 36-15-39, three times the 12-5-13 triangle; 50 in through one radian.
  expect(dimensions[0]!.value).toBeCloseTo(39, 12);
  expect(dimensions[0]!.text).toBe("3'-3\"");
  expect(dimensions[1]!.value).toBeCloseTo(50, 12);
  expect(dimensions[1]!.text).toContain("4'-2\"");
});

test.each(papers)('running dimensions crowded together on %o', (base) => {
  const width = steelRoom(base).x;
  const at = [0.4, 1.1, 1.3, 9.7, 31, 31.05, 31.4, 32, width - 3, width - 1.7, width - 1.69].map((x) => viewPoint(x, 0));
  const { dimensions } = drafted({
    ...base,
    view: {
      shapes: box(0, 0, width, 55, 'skin/1'),
      runnings: [
        { along: 'x', datum: viewPoint(0, 0), at, line: 0.4 },
        { along: 'y', datum: viewPoint(0, 12), at: [20, 21.5, 34.25, 55].map((y) => viewPoint(0, y)), line: 0.3 },
      ],
    },
  });
  expect(dimensions.filter((item) => item.rotation === 0).map((item) => item.value)).toEqual(at.map((p) => p.x));
  expect(dimensions.filter((item) => item.rotation !== 0).map((item) => item.value)).toEqual([8, 9.5, 22.25, 43]);
});

test.each(papers)('marks crowded in a band on %o', (base) => {
  const { x: width } = steelRoom(base);
  const kit = kitOf(base);
  const view = sampleDrawing(base).views[0]!;
  // As many marks as the row holds, at uneven places; two rails under each.
  const count = Math.floor(view.box.width / bandWidth(kit, 'RW123'));
  const xs = Array.from({ length: count }, (_, i) => 2 + (width * 0.6 * (i + (i % 3) * 0.31)) / count);
  const { callouts } = drafted({
    ...base,
    view: {
      shapes: [...box(0, 8, width, 3, 'rail/1'), ...box(0, 40, width, 3, 'rail/2')],
      bands: [{ top: inches(45), labels: xs.map((x, i) => ({ text: `R${String(i + 1)}`, x: inches(x), targets: [{ y: inches(9.5), piece: 'rail/1' }, { y: inches(41.5), piece: 'rail/2' }] })) }],
    },
  });
  expect(callouts).toHaveLength(count);
});

test.each(papers)('callouts crowded round one place on %o: near, on leaders, in numbered bubbles, or handed back', (base) => {
  const rings = Array.from({ length: 70 }, (_, i) => ({ x: 90 + (i % 10) * 3.7, y: 30 + Math.floor(i / 10) * 4.1, key: `post/${String(i)}` }));
  const { callouts, unplaced } = drafted({
    ...base,
    view: {
      shapes: rings.map(({ x, y, key }) => ring(x, y, 1.5, key)),
      callouts: rings.map(({ x, y, key }, i) => ({
        text: i % 4 === 0 ? `P${String(i)} set plumb, grout under the base` : `P${String(i)}`, target: viewPoint(x, y), piece: key, toward: { x: i - 35, y: 20 - i }, layer: 'MARKS',
      })),
    },
  });
  expect(callouts.length + unplaced.length).toBe(70);
  expect(callouts.length).toBeGreaterThan(30);
});

test.each(papers)('tables fill their room and no more on %o', (base) => {
  const kit = kitOf(base);
  for (const height of [1.7, 3.21, 5.9]) {
    const rows = rowsIn(kit, height);
    expect(tableHeight(kit, rows)).toBeLessThanOrEqual(height + 1e-9);
    expect(tableHeight(kit, rows + 1)).toBeGreaterThan(height);
  }
  expect(rowsIn(kit, 0.01)).toBe(1);
  const drawing = sampleDrawing(base);
  const room = drawing.overflow!;
  const columns = [{ title: 'Mark', align: 'start' }, { title: 'Length', align: 'end' }, { title: 'What it is', align: 'start' }] as const;
  const long = Array.from({ length: 60 }, (_, i) => [`R${String(i)}`, `${String(i)}'-3 5/8"`, 'rail, bent and coped, long point out'.slice(0, 7 + (i % 29))]);
  const wrapped = wrapLastColumn(kit, columns, long, room.width);
  const words = (rows: readonly (readonly string[])[]): string => rows.map((row) => row[2]).join('').replaceAll(' ', '');
  expect(words(wrapped)).toBe(words(long));
  expect(wrapped.filter((row) => row[0] !== '').map((row) => row[0])).toEqual(long.map((row) => row[0]));
  const rows = wrapped.slice(0, rowsIn(kit, room.height));
  const widths = columnWidths(kit, columns, wrapped);
  drafted({ ...base, rest: { tables: [{ title: 'Pieces', columns, rows, at: sheetPoint(room.x, room.y + room.height), widths }] } });
});

test.each(papers)('notes and dashes on %o', (base) => {
  const room = sampleDrawing(base).overflow!;
  const lines = ['1. Verify every size in the field before cutting.', '2. Grind welds smooth on the cattle side; no sharp edge may be left at hide height.'];
  drafted({
    ...base,
    view: { title: 'A view with a title that is long enough to be wrapped on narrow paper, from post 1 to post 12, seen from the cattle side '.repeat(2).trim(), shapes: [{ kind: 'curve', pen: PENS.center, curve: { kind: 'line', a: viewPoint(0, 5), b: viewPoint(90, 5) } }] },
    rest: { notes: [{ title: 'General notes', lines, at: sheetPoint(room.x, room.y + room.height), width: room.width }] },
  });
});
