/** Parts on sheets, held by a polygon library that is not ours: none overlaps, none sticks out, all are there, and the bound is one. */
import * as flatten from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { contourBox, contourCurves, flatArea } from '../../core/base/flat-curves.ts';
import { type Contour, type FlatShape, straightPath } from '../../core/base/flat-shape.ts';
import { inches } from '../../core/base/quantity.ts';
import { moldsOf, nestParts, nestStrip, partSpacing, type Nest, type NestPart, type SheetSize } from '../../core/shop/nesting/index.ts';
import { figures } from '../../core/shop/nesting/orders.ts';
import { moveShape } from '../../core/shop/plates/index.ts';
import { onShelves, shapes0, SHAPES_0_WIDTH } from '../support/known-shapes.ts';

/** Square inches that rounding may leave where two edges lie on each other. */
const SLIVER = 1e-5;
const OUT = 1e-6;

const faceOf = (contour: Contour): flatten.Polygon => {
  const polygon = new flatten.Polygon();
  polygon.addFace(contourCurves(contour).map((curve) => (curve.kind === 'line'
    ? new flatten.Segment(new flatten.Point(curve.a.x, curve.a.y), new flatten.Point(curve.b.x, curve.b.y))
    : new flatten.Arc(new flatten.Point(curve.center.x, curve.center.y), curve.radius, curve.start, curve.start + curve.sweep, curve.sweep > 0))));
  return polygon;
};

/** Area that two shapes share: their outlines', less what lies in a hole of one. */
function shared(a: FlatShape, b: FlatShape): number {
  const [p, q] = [contourBox(a.outer), contourBox(b.outer)];
  if (p.left >= q.right || q.left >= p.right || p.low >= q.high || q.low >= p.high) return 0;
  let both = flatten.BooleanOperations.intersect(faceOf(a.outer), faceOf(b.outer));
  for (const hole of [...a.holes, ...b.holes]) if (both.faces.size > 0) both = flatten.BooleanOperations.subtract(both, faceOf(hole));
  return both.faces.size === 0 ? 0 : Math.abs(both.area());
}

const overlaps = (shapes: readonly FlatShape[]): number =>
  shapes.reduce((most, a, i) => shapes.slice(i + 1).reduce((worst, b) => Math.max(worst, shared(a, b)), most), 0);

const sheet = (long: number, short: number): SheetSize => ({ long: inches(long), short: inches(short) });
const rectangle = (wide: number, high: number): FlatShape => ({ outer: straightPath([{ x: 0, y: 0 }, { x: wide, y: 0 }, { x: wide, y: high }, { x: 0, y: high }]), holes: [] });
const part = (id: string, quantity: number, shape: FlatShape, along = false): NestPart => ({ id, quantity, shape, along });

function nearBoxes(a: FlatShape, b: FlatShape, within: number): boolean {
  const [p, q] = [contourBox(a.outer), contourBox(b.outer)];
  return p.left < q.right + within && q.left < p.right + within && p.low < q.high + within && q.low < p.high + within;
}

/** What does not hold of a nest. */
function breaches(nest: Nest, parts: readonly NestPart[], spacing: number): string[] {
  const out: string[] = [];
  const byId = new Map(parts.map((one) => [one.id, one]));
  const laid = new Map<string, number>();
  for (const { size, parts: on, count } of nest.sheets) {
    const shapes = on.map(({ id, turn, at }) => moveShape(byId.get(id)!.shape, at, turn));
    for (const { id } of on) laid.set(id, (laid.get(id) ?? 0) + count);
    if (overlaps(shapes) > SLIVER) out.push('two parts overlap');
    for (const shape of shapes) {
      const { left, right, low, high } = contourBox(shape.outer);
      if (left < -OUT || low < -OUT || right > size.long + OUT || high > size.short + OUT) out.push('a part sticks out');
    }
    // Outline to outline, by that library again.
    for (const [i, a] of shapes.entries()) {
      for (const b of shapes.slice(i + 1).filter((other) => nearBoxes(a, other, spacing))) {
        const clear = Math.min(...[a.outer, ...a.holes].flatMap((one) => [b.outer, ...b.holes].map((other) => faceOf(one).distanceTo(faceOf(other))[0])));
        if (clear < spacing - OUT) out.push(`two parts ${String(clear)} apart`);
      }
    }
  }
  for (const { id, quantity } of parts) {
    const left = nest.left.some((one) => one.id === id);
    if ((laid.get(id) ?? 0) !== (left ? 0 : quantity)) out.push(`${String(laid.get(id) ?? 0)} of ${id}, ${String(quantity)} wanted`);
  }
  const sheets = nest.sheets.reduce((sum, { count }) => sum + count, 0);
  if (nest.least.sheets > sheets || nest.least.stockArea > nest.stockArea + OUT) out.push(`a bound over what is there: ${JSON.stringify(nest.least)}`);
  if (nest.partArea > nest.stockArea) out.push('more parts than sheet');
  return out;
}

describe('shapes0 on its strip', () => {
  const known = shapes0();
  const piles = known.map(({ id, quantity, shape }) => ({ molds: moldsOf(id, shape, [0], []), count: quantity }));
  const nest = nestStrip(piles, SHAPES_0_WIDTH, 0, 4);

  it('is the set that was published: 43 pieces, area 1596', () => {
    expect(known.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(43);
    expect(known.reduce((sum, { quantity, shape }) => sum + quantity * flatArea(shape), 0)).toBe(1596);
  });

  it('holds every piece, none over another, all inside', () => {
    expect(nest.laid).toHaveLength(43);
    const byId = new Map(known.map(({ id, shape }) => [id, shape]));
    const shapes = nest.laid.map(({ mold, at }) => moveShape(byId.get(mold.id)!, { x: at.x + mold.shift.x, y: at.y + mold.shift.y }, mold.turn));
    expect(overlaps(shapes)).toBeLessThan(SLIVER);
    for (const shape of shapes) {
      const { left, right, low, high } = contourBox(shape.outer);
      expect(left >= -OUT && right <= nest.length + OUT && low >= -OUT && high <= SHAPES_0_WIDTH + OUT).toBe(true);
    }
  });

  it('is strictly shorter than longest-first rectangles, and no shorter than its area', () => {
    const boxes = known.map(({ shape, quantity }) => {
      const { left, right, low, high } = contourBox(shape.outer);
      return { wide: right - left, high: high - low, count: quantity };
    });
    expect(nest.length).toBeLessThan(onShelves(boxes, SHAPES_0_WIDTH));
    expect(nest.length).toBeGreaterThanOrEqual(1596 / SHAPES_0_WIDTH);
  });

  it('comes out the same again', () => {
    expect(nestStrip(piles, SHAPES_0_WIDTH, 0, 4)).toEqual(nest);
  });
});

describe('parts on stock sheets', () => {
  const sizes = [sheet(120, 60), sheet(120, 48)];

  it('lie apart by three kerfs, and never nearer than a torch can stand', () => {
    expect(partSpacing(0.06)).toBeCloseTo(0.18, 12);
    expect(partSpacing(0)).toBe(0.125);
  });

  it('fill a sheet of their own size, and take the smaller one where it will do', () => {
    const nest = nestParts([part('S1', 2, rectangle(120, 60)), part('S2', 1, rectangle(120, 48))], sizes, 0.18);
    expect(nest.sheets.map(({ size, count }) => [size.short, count])).toEqual([[60, 2], [48, 1]]);
    expect(nest.least).toEqual({ sheets: 3, stockArea: 2 * 7200 + 5760 });
  });

  it('go into the corners and holes of others', () => {
    const square = straightPath([{ x: 10, y: 10 }, { x: 50, y: 10 }, { x: 50, y: 50 }, { x: 10, y: 50 }]);
    const frame: FlatShape = { outer: rectangle(60, 60).outer, holes: [square] };
    const ell: FlatShape = { outer: straightPath([{ x: 0, y: 0 }, { x: 59, y: 0 }, { x: 59, y: 20 }, { x: 20, y: 20 }, { x: 20, y: 60 }, { x: 0, y: 60 }]), holes: [] };
    const parts = [part('A', 1, frame), part('B', 1, ell), part('C', 1, rectangle(38, 38)), part('D', 1, rectangle(39, 38))];
    const nest = nestParts(parts, [sheet(120, 60)], 0.18);
    expect(nest.sheets).toHaveLength(1);
    expect(breaches(nest, parts, 0.18)).toEqual([]);
  });

  it('that are rolled keep their length along the sheet, where a sheet holds it so', () => {
    const turns = (nest: Nest): readonly number[] => nest.sheets.flatMap(({ parts }) => parts.map(({ turn }) => turn % 2));
    expect(turns(nestParts([part('S1', 4, rectangle(40, 55), true)], sizes, 0.18))).toEqual([0, 0]);
    expect(turns(nestParts([part('S1', 4, rectangle(40, 55))], sizes, 0.18)).length).toBeGreaterThanOrEqual(2);
    expect(turns(nestParts([part('S1', 1, rectangle(40, 70), true)], sizes, 0.18))).toEqual([1]);
  });

  it('larger than every sheet are told, not laid', () => {
    const nest = nestParts([part('S1', 3, rectangle(121, 30)), part('S2', 1, rectangle(10, 10))], sizes, 0.18);
    expect(nest.left.map(({ id }) => id)).toEqual(['S1']);
    expect(nest.sheets).toHaveLength(1);
  });

  it('that lie too near are found by the check below', () => {
    const parts = [part('S1', 2, rectangle(50, 50))];
    const nest = nestParts(parts, sizes, 0.18);
    expect(breaches(nest, parts, 0.18)).toEqual([]);
    expect(breaches(nest, parts, 0.2)).toHaveLength(1);
    const [first] = nest.sheets;
    const pushed = { ...nest, sheets: [{ ...first!, parts: first!.parts.map((one) => ({ ...one, at: { x: one.at.x * 0.9, y: one.at.y } })) }] };
    expect(breaches(pushed, parts, 0.18)).toContain('two parts overlap');
  });

  it('hold all of this for random parts', () => {
    const next = figures(20260302);
    const figure = (low: number, high: number): number => low + (high - low) * next();
    for (let round = 0; round < 4; round++) {
      const parts = Array.from({ length: 6 }, (_, i) => {
        const [wide, high] = [figure(4, 60), figure(4, 40)];
        const lean = figure(0, wide / 2);
        const shapes: readonly FlatShape[] = [
          rectangle(wide, high),
          { outer: straightPath([{ x: 0, y: 0 }, { x: wide, y: 0 }, { x: wide + lean, y: high }, { x: lean, y: high }]), holes: [] },
          { outer: straightPath([{ x: 0, y: 0 }, { x: wide, y: 0 }, { x: wide - lean / 2, y: high }, { x: lean / 2, y: high }]), holes: [{ kind: 'circle', center: { x: wide / 2, y: high / 2 }, radius: Math.min(wide, high) / 5 }] },
          { outer: { kind: 'path', corners: [{ x: 0, y: 0, bulge: 0 }, { x: wide, y: 0, bulge: figure(-0.4, 0.8) }, { x: wide, y: high, bulge: 0 }, { x: 0, y: high, bulge: 0 }] }, holes: [] },
        ];
        return part(`P${String(i)}`, 1 + Math.floor(figure(0, 4)), shapes[Math.floor(figure(0, shapes.length))]!, next() < 0.3);
      });
      const spacing = partSpacing(figure(0, 0.3));
      expect([round, breaches(nestParts(parts, [sheet(figure(80, 144), figure(62, 72)), sheet(96, 48)], spacing), parts, spacing)]).toEqual([round, []]);
    }
  });
});
