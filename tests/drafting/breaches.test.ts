/** The checker of drawings held to account: a clean drawing has no breach, and each way of breaking it is found. */
import { beforeAll, describe, expect, test } from 'vitest';
import { sheetPoint, viewPoint } from '../../core/base/points.ts';
import { inches, radians } from '../../core/base/quantity.ts';
import { draft } from '../../core/drafting/draft.ts';
import { PENS, makeText } from '../../core/drafting/kit.ts';
import { type Callout, type Dimension, type Primitive, type Sheet, type Stroke } from '../../core/drafting/primitives.ts';
import { type Parts, type Piece } from '../../core/parts/types.ts';
import { setBreaches } from '../support/set-breaches.ts';
import { block, box, breachesOf, font, kitOf, ring, sampleDrawing } from './sample.ts';

let clean: Sheet;
const kit = kitOf();

beforeAll(() => {
  const drawing = sampleDrawing({
    view: {
      shapes: [...box(0, 0, 150, 6, 'rail/1'), ...box(0, 20, 150, 6, 'rail/2'), ring(60, 60, 9, 'post/1')],
      dimensions: [
        { measure: 'aligned', required: true, from: viewPoint(0, 26), to: viewPoint(60, 60), offsets: [0.4, 0.7] },
        { measure: 'radius', required: true, center: viewPoint(60, 60), radius: inches(9), angles: [radians(0.7)] },
      ],
      callouts: [{ text: 'R2', target: viewPoint(75, 3), piece: 'rail/1', toward: { x: 1, y: 1 }, layer: 'MARKS' }],
      runnings: [{ along: 'x', datum: viewPoint(0, 0), at: [viewPoint(37, 0), viewPoint(150, 0)], line: 0.4 }],
    },
  });
  const drafted = draft(font, block(), drawing);
  expect(drafted.unplaced).toEqual([]);
  clean = drafted.sheet;
});

const withMore = (...more: Primitive[]): Sheet => ({ ...clean, primitives: [...clean.primitives, ...more] });
const dimension = (measure: Dimension['measure']): Dimension => {
  const found = clean.primitives.find((item) => item.kind === 'dimension' && item.measure === measure);
  if (found?.kind !== 'dimension') throw new Error(measure);
  return found;
};
const callout = (): Callout => clean.primitives.find((item) => item.kind === 'callout')!;
const swap = (old: Primitive, now: Primitive): Sheet => ({ ...clean, primitives: clean.primitives.map((item) => (item === old ? now : item)) });
const textAt = (x: number, y: number, rotation = 0): Extract<Stroke, { kind: 'text' }> => makeText(kit, 'NOTES', 'Xq', sheetPoint(x, y), 'middle', radians(rotation));
const line = (x0: number, y0: number, x1: number, y1: number, layer: 'SIZES' | 'STEEL' = 'SIZES'): Stroke => ({
  kind: 'line', pen: { ...PENS.size, layer }, a: sheetPoint(x0, y0), b: sheetPoint(x1, y1),
});

/** An empty place on the sample's paper: right of the view. */
const [X, Y] = [14.5, 8];

describe('a clean drawing', () => {
  test('has no breach, nor with more that stands clear', () => {
    expect(breachesOf(clean)).toEqual([]);
    expect(breachesOf(withMore(textAt(X, Y), textAt(X + 1, Y, 0.7), line(X, Y + 0.4, X + 1, Y + 0.5)))).toEqual([]);
    // Steel may run under a text.
    expect(breachesOf(withMore(textAt(X, Y), line(X - 1, Y, X + 1, Y + 0.05, 'STEEL')))).toEqual([]);
    // An arc whose chord would cross the text, but which passes round it.
    expect(breachesOf(withMore(textAt(X, Y), { kind: 'circle', pen: PENS.size, center: sheetPoint(X, Y), radius: inches(0.4) }))).toEqual([]);
    expect(breachesOf(withMore(textAt(X, Y), { kind: 'arc', pen: PENS.size, center: sheetPoint(X - 1, Y), radius: inches(1), start: radians(0.5), sweep: radians(5.2) }))).toEqual([]);
  });
});

describe('each breach is found', () => {
  const half = () => (kit.up + kit.down) / 2;
  const cases: readonly (readonly [string, () => Sheet, RegExp])[] = [
    ['text on text', () => withMore(textAt(X, Y), textAt(X + 0.05, Y)), /touches text/],
    ['turned text on text', () => withMore(textAt(X, Y), textAt(X + 0.1, Y - 0.05, 1.1)), /touches text/],
    ['texts 0.03 in apart', () => withMore(textAt(X, Y), textAt(X, Y + 2 * half() + 0.03)), /touches text/],
    ['line through text', () => withMore(textAt(X, Y), line(X - 1, Y - 0.3, X + 1, Y + 0.4)), /touches a line/],
    ['line 0.015 in under text', () => withMore(textAt(X, Y), line(X - 1, Y - kit.down - 0.015, X + 1, Y - kit.down - 0.015)), /touches a line/],
    ['upright line in text', () => withMore(textAt(X, Y), line(X, Y - 1, X, Y + 1)), /touches a line/],
    ['arc through text', () => withMore(textAt(X, Y), { kind: 'arc', pen: PENS.mark, center: sheetPoint(X - 1, Y), radius: inches(1), start: radians(-0.5), sweep: radians(1) }), /touches a arc/],
    ['arc run clockwise through text', () => withMore(textAt(X, Y), { kind: 'arc', pen: PENS.mark, center: sheetPoint(X - 1, Y), radius: inches(1), start: radians(0.5), sweep: radians(-1) }), /touches a arc/],
    ['circle through text', () => withMore(textAt(X, Y), { kind: 'circle', pen: PENS.note, center: sheetPoint(X, Y), radius: inches(0.06) }), /touches a circle/],
    ['arrowhead in text', () => withMore(textAt(X, Y), { kind: 'fill', layer: 'SIZES', points: [sheetPoint(X, Y), sheetPoint(X + 0.12, Y + 0.02), sheetPoint(X + 0.12, Y - 0.02)] }), /touches a fill/],
    ['bar round text', () => withMore(textAt(X, Y), { kind: 'fill', layer: 'NOTES', points: [[-1, -1], [1, -1], [1, 1], [-1, 1]].map(([x, y]) => sheetPoint(X + x!, Y + y!)) }), /touches a fill/],
    ['dot 0.01 in under text', () => withMore(textAt(X, Y), { kind: 'dot', layer: 'MARKS', center: sheetPoint(X, Y - kit.down - 0.03), radius: inches(0.02) }), /touches a dot/],
    ['text on the border', () => withMore(textAt(17 - 0.35, Y)), /touches a line of FRAME/],
    ['text outside the border', () => withMore(textAt(6, 0.18)), /leaves the border/],
    ['text off the paper', () => withMore(textAt(17, 10.9)), /leaves the paper/],
    ['small text', () => withMore({ ...textAt(X, Y), height: inches(0.09), width: inches(textAt(X, Y).width * 0.9) }), /0\.09 high/],
    ['text small for its paper', () => ({ ...clean, paper: { ...clean.paper, text: inches(0.16) } }), /less than 0\.16/],
    ['false width', () => withMore({ ...textAt(X, Y), width: inches(0.3) }), /font's width/],
    ['typed value', () => swap(dimension('aligned'), { ...dimension('aligned'), value: dimension('aligned').value + 0.001 }), /witness points measure/],
    ['typed text', () => swap(dimension('linear'), retext(dimension('linear'), "13'-1\"")), /does not print its value/],
    ['longer figure with the same tail', () => swap(dimension('linear'), retext(dimension('linear'), `1${dimension('linear').text}`)), /does not print its value/],
    ['text that is not drawn', () => swap(dimension('radius'), { ...dimension('radius'), strokes: [] }), /does not print its text/],
    ['chain too far off', () => swap(dimension('linear'), { ...retext(dimension('linear'), `3'-1 1/8"`), chained: true }), /farther than one step/],
    ['false radius', () => swap(dimension('radius'), { ...dimension('radius'), from: sheetPoint(1, 1) }), /witness points measure/],
    ['dimension of no view', () => swap(dimension('radius'), { ...dimension('radius'), view: 'v9' }), /no view: v9/],
    ['witness off the paper', () => swap(dimension('aligned'), { ...dimension('aligned'), line: sheetPoint(-1, 2) }), /its line is not on the paper/],
    ['mark beside its piece', () => swap(callout(), { ...callout(), pieces: ['rail/2'] }), /ends off rail\/2/],
    ['mark of a piece that is not shown', () => swap(callout(), { ...callout(), pieces: ['rail/9'] }), /no outline of rail\/9/],
    ['leader that misses', () => swap(callout(), { ...callout(), targets: [sheetPoint(callout().targets[0]!.x + 0.02, callout().targets[0]!.y)] }), /ends at no target/],
    ['no number', () => withMore(line(X, NaN, X, Y)), /no number/],
    ['line off the paper', () => withMore(line(X, Y, 17.2, Y)), /leaves the paper/],
    ['arc off the paper', () => withMore({ kind: 'arc', pen: PENS.thin, center: sheetPoint(16, 5), radius: inches(1.2), start: radians(-1), sweep: radians(2) }), /arc leaves the paper/],
    ['stubby arrowhead', () => withMore({ kind: 'fill', layer: 'SIZES', points: [sheetPoint(X, Y), sheetPoint(X + 0.1, Y + 0.03), sheetPoint(X + 0.1, Y - 0.03)] }), /three times/],
    ['solid hidden line', () => withMore({ kind: 'line', pen: { ...PENS.hidden, dash: 'solid' }, a: sheetPoint(X, Y), b: sheetPoint(X, Y + 1) }), /not dashed/],
    ['unknown weight', () => withMore({ kind: 'line', pen: JSON.parse('{"layer":"STEEL","weight":"fat","dash":"solid"}') as typeof PENS.thin, a: sheetPoint(X, Y), b: sheetPoint(X, Y + 1) }), /line weight fat/],
    ['title elsewhere', () => ({ ...clean, views: clean.views.map((view) => ({ ...view, title: 'Gate' })) }), /not its title/],
    ['view without its foot', () => ({ ...clean, views: clean.views.map((view) => ({ ...view, box: { ...view.box, y: view.box.y + 1 } })) }), /no scale bar/],
  ];
  test.each(cases)('%s', (_, make, message) => {
    const found = breachesOf(make());
    expect(found.some((breach) => message.test(breach)), found.join('\n')).toBe(true);
  });
});

const retext = (item: Dimension, text: string): Dimension => ({
  ...item, text, strokes: item.strokes.map((stroke) => (stroke.kind === 'text' ? makeText(kit, 'SIZES', text, stroke.at, stroke.anchor, stroke.rotation) : stroke)),
});

describe('a set', () => {
  const piece = (key: string, mark: string, bay: number): Piece => ({
    key, kind: 'rail', mark, signature: mark, section: 'x', length: inches(99), lengthShort: null, flatHeight: null, bend: null, weight: 1 as Piece['weight'],
    run: 'alley', side: 'left', bay, bays: 1, ends: [{ kind: 'square' }, { kind: 'square' }],
    place: { kind: 'rail', row: 0, height: inches(20), from: inches(0), to: inches(99) },
  });
  const parts = (...pieces: Piece[]): Parts => ({ pieces, marks: {}, hardware: [] });
  test('that shows and marks its pieces is clean', () => {
    expect(setBreaches([clean], parts(piece('rail/1', 'R2', 1)), font)).toEqual([]);
  });
  test('breaks each rule by name', () => {
    expect(setBreaches([clean], parts(piece('rail/1', 'R2', 1), piece('rail/2', 'R2', 2)), font)).toEqual(['no drawing shows and marks R2, run alley, left, bay 2']);
    expect(setBreaches([clean], parts(piece('rail/1', 'R', 1)), font)).toHaveLength(2);
    expect(setBreaches([clean], parts(), font)).toEqual(['mark "R2" refers to rail/1, which is no piece']);
    expect(setBreaches([swap(callout(), { ...callout(), pieces: [] })], parts(), font)).toEqual(['mark "R2" refers to no piece']);
    const again = { ...clean, file: clean.file.toUpperCase() };
    expect(setBreaches([clean, again], parts(piece('rail/1', 'R2', 1)), font)).toEqual(['file 101 sample is used twice', 'number 101 is used twice']);
    expect(setBreaches([withMore(makeText(kit, 'NOTES', '\u{1F404}', sheetPoint(X, Y), 'start'))], parts(piece('rail/1', 'R2', 1)), font)).toHaveLength(1);
  });
});
