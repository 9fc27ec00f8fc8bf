/** Each drawing bears the sizes that its trade needs of it; one left out fails. Values are worked from the brief and the set-out, not from the drawing. */
import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Dimension } from '../../core/drafting/primitives.ts';
import { chord, gaugeChord, rise, type Piece } from '../../core/parts/index.ts';
import { type Fence, lengthAtOffset } from '../../core/layout/index.ts';
import { parseLength, printLength } from '../../core/units/index.ts';
import { drawProject, type DrawnSet, drawSound, EXAMPLES, exampleText } from '../support/drawn.ts';
import { randomProjects } from '../support/random-brief.ts';
import { bearsMark } from '../support/set-breaches.ts';
import { across, count, rowsWith, same, upright, valuesOf, type Viewed, viewsNamed } from './asked-for.ts';

const RANDOM_SEED = 51;
const random = randomProjects(RANDOM_SEED, 30).flatMap((project, index): (readonly [string, DrawnSet])[] => {
  const outcome = drawProject(JSON.stringify(project));
  return outcome.drawn ? [[`seed ${String(RANDOM_SEED)}, project ${String(index)}`, outcome.set]] : [];
});
const sets: readonly (readonly [string, DrawnSet])[] = [...EXAMPLES.map((name) => [name, drawSound(exampleText(name))] as const), ...random];

/** Stretches of a fence, each with its first and last post, counted from 0: its elevations begin where the one before ends. */
function stretches(set: DrawnSet, fence: Fence, kind: 'elevation' | 'arc'): { readonly on: Viewed; readonly from: number; readonly to: number }[] {
  const first = (one: Viewed): number => Number(one.view.id.split(' ').at(-1)) - 1;
  const views = viewsNamed(set, `${kind} ${fence.run} ${fence.side}`).sort((a, b) => first(a) - first(b));
  const last = postsOf(fence).length - 1;
  return views.map((on, i) => ({ on, from: first(on), to: i + 1 < views.length ? first(views[i + 1]!) : last }));
}

const postsOf = (fence: Fence): number[] => [...new Set(fence.spans.flatMap((span) => span.posts))];
const piecesOf = (set: DrawnSet, fence: Fence, kind: Piece['kind']): Piece[] =>
  set.parts.pieces.filter((piece) => piece.kind === kind && piece.run === fence.run && piece.side === fence.side);
const close = (values: readonly number[], wanted: readonly number[]): boolean =>
  values.length === wanted.length && [...values].sort((a, b) => a - b).every((value, i) => same(value, [...wanted].sort((a, b) => a - b)[i]!));
/** A figure as it is printed, read back to inches. */
const printed = (set: DrawnSet, item: Dimension): number => parseLength(set.brief.units === 'mm' ? `${item.text} mm` : item.text) ?? NaN;
/** 1/16 in, or 1 mm. */
const step = (set: DrawnSet): number => (set.brief.units === 'mm' ? 1 / 25.4 : 1 / 16);

/** From the outermost posts, roof corners and decks to each other on the plan, inches. */
function reach({ layout }: DrawnSet, { sheet, view }: Viewed, way: 'x' | 'y'): number {
  const posts = sheet.primitives.flatMap((item) => (item.kind === 'circle' && item.piece !== undefined ? [item.center[way] - item.radius, item.center[way] + item.radius] : []));
  const decks = layout.catwalks.flatMap(({ stretches, flights }) => [...stretches.flatMap(({ parts }) => parts), ...flights].flatMap(({ corners }) => corners));
  const ends = [...posts.map((at) => at / view.scale), ...[...layout.roof, ...decks].map((point) => point[way] + view.at[way] / view.scale)];
  return Math.max(...ends) - Math.min(...ends);
}

describe('the plan', () => {
  it.each(sets)('%s: overall length and breadth, pen radius, chute width', (_, set) => {
    // A catwalk's deck has a plan of its own, under its own name.
    const plans = viewsNamed(set, 'plan').filter(({ view }) => view.id === 'plan');
    expect(plans.length).toBeGreaterThan(0);
    for (const plan of plans) {
      expect(plan.dimensions.filter(across)).toHaveLength(1);
      expect(plan.dimensions.filter(upright)).toHaveLength(1);
    }
    const all = plans.flatMap((plan) => plan.dimensions);
    expect(all.some((item) => item.measure === 'radius' && same(item.value, set.brief.crowdPen.radius))).toBe(true);
    expect(all.some((item) => item.measure === 'aligned' && same(item.value, set.brief.chute.width))).toBe(true);
    if (plans.length > 1) return;
    const post = set.brief.crowdPen.pivotPost.across;
    const slack = 2 * Math.max(...set.layout.fences.map(({ section }) => section.k + section.D + post));
    expect(Math.abs(plans[0]!.dimensions.find(across)!.value - reach(set, plans[0]!, 'x'))).toBeLessThan(slack);
    expect(Math.abs(plans[0]!.dimensions.find(upright)!.value - reach(set, plans[0]!, 'y'))).toBeLessThan(slack);
  });
});

describe('the stakeout', () => {
  it.each(sets)('%s: from A to the other control points', (_, set) => {
    const [overview, ...more] = viewsNamed(set, 'stakeout');
    expect(more).toEqual([]);
    const { b, c } = set.brief.control;
    for (const point of c === null ? [b] : [b, c]) expect(count(overview!, 'aligned', Math.hypot(point.x, point.y))).toBeGreaterThan(0);
  });
});

describe('elevations', () => {
  it.each(sets)('%s: every post and rail top runs from one datum, and the figures close', (_, set) => {
    // Ramps have elevations of their own: asked-for-ramps.
    for (const fence of set.layout.fences.filter(({ run }) => !set.layout.ramps.some(({ name }) => name === run))) {
      const posts = postsOf(fence);
      const onAxis = (a: number, b: number): number => lengthAtOffset(fence, posts[a]!, posts[b]!, fence.section.kr);
      const found = stretches(set, fence, 'elevation');
      expect(found[0]?.from, `${fence.run} ${fence.side}`).toBe(0);
      let whole = 0;
      for (const { on, from, to } of found) {
        const along = on.dimensions.filter(across);
        const heights = on.dimensions.filter(upright);
        const wanted = Array.from({ length: to - from }, (__, i) => onAxis(from, from + i + 1));
        expect([on.view.id, valuesOf(along), close(valuesOf(along), wanted)]).toEqual([on.view.id, valuesOf(along), true]);
        const tops = fence.section.rows.map((row) => row + fence.section.railHeight / 2);
        for (const top of tops) expect([on.view.id, top, count(on, upright, top)]).toEqual([on.view.id, top, 1]);
        for (const item of [...along, ...heights]) expect(Math.abs(printed(set, item) - item.value), `${on.view.id}: ${item.text}`).toBeLessThanOrEqual(step(set));
        // One datum for all, and the last figure is the whole stretch.
        expect(new Set(along.map((item) => `${String(item.from.x)} ${String(item.from.y)}`)).size).toBe(1);
        const last = along.reduce((far, item) => (item.value > far.value ? item : far));
        expect(last.text).toBe(printLength(inches(onAxis(from, to)), set.brief.units, 'feet', false));
        whole += last.value;
      }
      expect(Math.abs(whole - onAxis(0, posts.length - 1))).toBeLessThan(1e-6 * posts.length);
    }
  });
});

describe('arcs in plan', () => {
  const rolledIn = (set: DrawnSet, fence: Fence, from: number, to: number): Piece[] =>
    piecesOf(set, fence, 'rail').filter((piece) => piece.bend !== null && piece.bay > from && piece.bay - 1 + piece.bays <= to);

  it.each(sets)('%s: axis radius, chord and rise of one rolled rail', (_, set) => {
    for (const fence of set.layout.fences) {
      const views = stretches(set, fence, 'arc');
      expect(views.length, `${fence.run} ${fence.side}`).toBe(fence.faceRadius === null ? 0 : stretches(set, fence, 'elevation').length);
      if (fence.faceRadius === null) continue;
      const axis = fence.faceRadius + fence.radiusSign * fence.section.kr;
      for (const { on, from, to } of views) {
        expect([on.view.id, count(on, 'radius', axis)]).toEqual([on.view.id, 1]);
        const rails = rolledIn(set, fence, from, to);
        if (rails.length === 0) continue;
        const shown = rails.filter((rail) => {
          const angle = rail.length / axis;
          const bears = (word: string, value: number): boolean =>
            on.dimensions.some((item) => item.measure === 'aligned' && bearsMark(item.text, rail.mark) && item.text.includes(word) && same(item.value, value));
          return bears('chord', chord(axis, angle)) && bears('rise', rise(axis, angle));
        });
        expect([on.view.id, shown.length > 0]).toEqual([on.view.id, true]);
      }
    }
  });

  it.each(sets)('%s: the gauge rise of every rolled rail in the table beside it', (_, set) => {
    for (const fence of set.layout.fences) {
      if (fence.faceRadius === null) continue;
      for (const { on, from, to } of stretches(set, fence, 'arc')) {
        for (const rail of rolledIn(set, fence, from, to)) {
          const inside = rail.bend!.radius - fence.brief.rail.across / 2;
          const gauge = gaugeChord(inside, rail.length / rail.bend!.radius, set.brief.shop.gaugeChord);
          if (gauge <= 0) continue;
          // The circle's own equation: how far a chord's middle stands off its arc.
          const size = printLength(inches(inside - Math.sqrt(inside ** 2 - (gauge / 2) ** 2)), set.brief.units, 'bracket', false);
          const beside = set.sheets.slice(set.sheets.indexOf(on.sheet)).filter((sheet) => sheet.number.startsWith('3'));
          expect([on.view.id, rail.mark, beside.some((sheet) => rowsWith(sheet, rail.mark).some((cells) => cells.includes(size)))]).toEqual([on.view.id, rail.mark, true]);
        }
      }
    }
  });
});

describe('the junction', () => {
  it.each(sets)('%s: m, funnel length and angle, mouth, radius', (_, set) => {
    const [view, ...more] = viewsNamed(set, 'junction');
    expect(more).toEqual([]);
    const { radius, funnelAngle } = set.brief.crowdPen;
    const { width } = set.brief.chute;
    // The funnel leans from the mouth's direction: its run across the walk is R - w.
    const m = (radius - width) / Math.tan(funnelAngle);
    if (m > 1e-6) expect(count(view!, upright, m), 'm').toBe(1);
    expect(count(view!, 'aligned', (radius - width) / Math.sin(funnelAngle)), 'funnel length').toBe(1);
    expect(count(view!, 'angle', funnelAngle), 'funnel angle').toBe(1);
    expect(count(view!, across, width), 'mouth').toBeGreaterThan(0);
    expect(count(view!, across, radius), 'radius').toBeGreaterThan(0);
  });

  it.each(sets)('%s: at the pivot post, where both fences begin and the wedge between them', (_, set) => {
    const [view, ...more] = viewsNamed(set, 'pivot corner');
    expect(more).toEqual([]);
    const { alley, funnel } = set.layout.pivotGap;
    const beside = set.layout.fences.filter((fence) => fence.run.startsWith('alley-') && fence.side === set.brief.crowdPen.hand).at(-1)!;
    // A tape lies straight: along an alley that curves there, the chord of the start.
    const radius = beside.faceRadius;
    const taped = radius === null ? alley : chord(radius, alley / radius);
    for (const start of [taped, funnel]) expect(count(view!, 'aligned', start)).toBeGreaterThan(0);
    expect(view!.dimensions.filter((item) => item.measure === 'aligned' && (same(item.value, taped) || same(item.value, funnel))).length).toBeGreaterThanOrEqual(2);
    expect(count(view!, 'angle', set.layout.pivotWedge)).toBe(1);
  });
});
