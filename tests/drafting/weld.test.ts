/** Weld symbols held against AWS A2.4 as far as it was read: below the line is the arrow's side, size left, length-pitch right, circle all round, flag field. */
import { expect, test } from 'vitest';
import { viewPoint } from '../../core/base/points.ts';
import { inches } from '../../core/base/quantity.ts';
import { draft } from '../../core/drafting/draft.ts';
import { type WeldKind, type WeldMark, type WeldSymbol } from '../../core/drafting/model.ts';
import { type Callout, type Stroke } from '../../core/drafting/primitives.ts';
import { type Sample, block, box, breachesOf, font, sampleDrawing } from './sample.ts';

const mark = (kind: WeldKind, size: number, stitch: readonly [number, number] | null = null): WeldMark =>
  ({ kind, size: inches(size), length: stitch === null ? null : inches(stitch[0]), pitch: stitch === null ? null : inches(stitch[1]) });
const none: WeldSymbol = { arrow: null, other: null, allRound: false, field: false, tail: null };
const joint = viewPoint(70, 40);

/** The symbol drafted on a plate's edge, with its reference line's height and the end where the arrow meets it. */
function drafted(symbol: Partial<WeldSymbol>, toward = { x: 1, y: 1 }, sample: Sample = {}) {
  const view = { shapes: box(20, 10, 50, 60, 'plate/1'), welds: [{ ...none, ...symbol, target: joint, toward }] };
  const { sheet, unplaced } = draft(font, block(sample.units), sampleDrawing({ ...sample, view }));
  expect(unplaced).toEqual([]);
  expect(breachesOf(sheet)).toEqual([]);
  const [callout] = sheet.primitives.filter((item): item is Callout => item.kind === 'callout');
  const [tip, end] = callout!.arrow!;
  const at = sheet.views[0]!.at;
  const scale = sheet.views[0]!.scale;
  expect(tip.x).toBeCloseTo(at.x + joint.x * scale, 9);
  expect(tip.y).toBeCloseTo(at.y + joint.y * scale, 9);
  const texts = callout!.strokes.filter((stroke): stroke is Extract<Stroke, { kind: 'text' }> => stroke.kind === 'text');
  const lines = callout!.strokes.filter((stroke): stroke is Extract<Stroke, { kind: 'line' }> => stroke.kind === 'line');
  const reference = lines.find(({ a, b }) => Math.hypot(a.x - end.x, a.y - end.y) < 1e-9 && a.y === b.y)!;
  const text = (words: string) => texts.find((one) => one.text === words)!;
  return { strokes: callout!.strokes, tip, end, texts, lines, reference, text };
}

/** Upright lines that stand on the reference line, by their foot and how far up they go. */
const uprights = ({ lines, end }: ReturnType<typeof drafted>) =>
  lines.filter(({ a, b }) => a.x === b.x && Math.abs(a.y - end.y) < 1e-9).map(({ a, b }) => ({ x: a.x, rise: b.y - a.y })).filter(({ x }) => Math.abs(x - end.x) > 1e-9);

test.each([{ x: 1, y: 1 }, { x: -1, y: -1 }, { x: -1, y: 1 }, { x: 1, y: -1 }])('a fillet on the arrow side, from every direction (%o)', (toward) => {
  const one = drafted({ arrow: mark('fillet', 0.1875, [2, 12]) }, toward);
  const size = one.text('3/16');
  const length = one.text('2-12');
  const [leg] = uprights(one);
  // Below the line, the upright leg to the left of the slope, the size to the left of it, length and pitch to the right.
  expect(leg!.rise).toBeLessThan(0);
  const slope = one.lines.find(({ a, b }) => a.x === leg!.x && b.x > a.x && b.y === one.end.y);
  expect(slope).toBeDefined();
  expect(size.anchor).toBe('end');
  expect(size.at.x).toBeLessThan(leg!.x);
  expect(length.anchor).toBe('start');
  expect(length.at.x).toBeGreaterThan(slope!.b.x);
  for (const text of [size, length]) expect(text.at.y + text.height).toBeLessThan(one.end.y);
  // The reference line is level and reaches past all of it; the arrow's head is at the joint.
  const [low, high] = [Math.min(one.reference.a.x, one.reference.b.x), Math.max(one.reference.a.x, one.reference.b.x)];
  expect(size.at.x - size.width).toBeGreaterThan(low);
  expect(length.at.x + length.width).toBeLessThan(high);
  const head = one.strokes.find((stroke) => stroke.kind === 'fill')!;
  expect(head.kind === 'fill' && head.points[0]).toEqual(one.tip);
  expect(Math.abs(one.end.y - one.tip.y)).toBeGreaterThan(0);
});

test('a fillet on the other side stands above the line; on both sides one over the other, each with its size', () => {
  const other = drafted({ other: mark('fillet', 0.25) });
  expect(uprights(other)[0]!.rise).toBeGreaterThan(0);
  expect(other.text('1/4').at.y).toBeGreaterThan(other.end.y);
  const both = drafted({ arrow: mark('fillet', 0.1875), other: mark('fillet', 0.3125) });
  const legs = uprights(both);
  expect(legs.map(({ rise }) => Math.sign(rise)).sort()).toEqual([-1, 1]);
  expect(legs[0]!.x).toBe(legs[1]!.x);
  expect(both.text('3/16').at.y).toBeLessThan(both.end.y);
  expect(both.text('5/16').at.y).toBeGreaterThan(both.end.y);
});

test('all round is a circle where the arrow meets the line, field a flag there', () => {
  const plain = drafted({ arrow: mark('fillet', 0.1875) });
  expect(plain.strokes.filter((stroke) => stroke.kind === 'circle')).toEqual([]);
  const round = drafted({ arrow: mark('fillet', 0.1875), allRound: true });
  const circles = round.strokes.flatMap((stroke) => (stroke.kind === 'circle' ? [stroke] : []));
  expect(circles.map(({ center }) => center)).toEqual([round.end]);
  for (const toward of [{ x: 1, y: 1 }, { x: -1, y: 1 }]) {
    const field = drafted({ arrow: mark('fillet', 0.1875), field: true }, toward);
    const staff = field.lines.find(({ a, b }) => a.x === b.x && a.x === field.end.x && a.y === field.end.y)!;
    expect(staff.b.y).toBeGreaterThan(field.end.y);
    const flags = field.strokes.flatMap((stroke) => (stroke.kind === 'fill' ? [stroke] : []));
    expect(flags).toHaveLength(2);
    const [tip, ...base] = flags[1]!.points;
    for (const corner of base) expect(corner.x).toBeCloseTo(field.end.x, 9);
    // It flies toward the tail.
    expect(Math.sign(tip!.x - field.end.x)).toBe(Math.sign(field.reference.b.x - field.end.x));
  }
});

test('grooves: two lines; a line and a flare; two flares that turn their backs on each other', () => {
  const square = drafted({ arrow: mark('square', 0.125), tail: 'gap 1/8' });
  expect(uprights(square)).toHaveLength(2);
  const tail = square.text('gap 1/8');
  expect(Math.abs(tail.at.x - square.end.x)).toBeGreaterThan(Math.abs(square.reference.b.x - square.end.x));
  const arcsOf = ({ strokes }: ReturnType<typeof drafted>) => strokes.flatMap((stroke) => (stroke.kind === 'arc' ? [stroke] : []));
  const bevel = drafted({ other: mark('flare-bevel', 0.125) });
  expect(uprights(bevel)).toHaveLength(1);
  expect(arcsOf(bevel)).toHaveLength(1);
  expect(arcsOf(bevel)[0]!.center.x).toBeGreaterThan(uprights(bevel)[0]!.x);
  const vee = arcsOf(drafted({ arrow: mark('flare-vee', 0.125) }));
  expect(vee).toHaveLength(2);
  const neck = vee.map(({ center, radius, start }) => center.x + radius * Math.cos(start));
  // Each leaves the line at its neck and ends farther from the other, below the line.
  expect(vee[0]!.center.x).toBeLessThan(neck[0]!);
  expect(vee[1]!.center.x).toBeGreaterThan(neck[1]!);
  for (const { center, radius, start, sweep } of vee) expect(center.y + radius * Math.sin(start + sweep)).toBeCloseTo(center.y - radius, 9);
});

test('in millimeters, and nothing to say is refused', () => {
  const metric = drafted({ arrow: mark('fillet', 5 / 25.4, [50 / 25.4, 300 / 25.4]) }, { x: 1, y: 1 }, { paper: 'ISO A3', units: 'mm' });
  expect(metric.texts.map(({ text }) => text)).toEqual(['5', '50-300']);
  expect(() => drafted({})).toThrow(/says nothing/);
});
