/** Each drawing of a ramp bears the sizes that its trade needs. Values are worked here from the brief, by geometry.md's formulas, not from the drawing. */
import { describe, expect, it } from 'vitest';
import { lineHeight } from '../../core/layout/index.ts';
import { drawProject, type DrawnSet, drawSound, exampleText } from '../support/drawn.ts';
import { across, count, same, upright, valuesOf, viewsNamed } from './asked-for.ts';
import { randomRamps } from './random-ramps.ts';

const random = randomRamps(29, 8).flatMap((project, index): (readonly [string, DrawnSet])[] => {
  const outcome = drawProject(JSON.stringify(project));
  return outcome.drawn ? [[`seed 29, project ${String(index)}`, outcome.set]] : [];
});
const sets: readonly (readonly [string, DrawnSet])[] = [['juniper-flat', drawSound(exampleText('juniper-flat'))], ...random];

describe('the profile of a ramp', () => {
  it.each(sets)('%s: every rise and run from the foot, slope length, dock', (_, set) => {
    expect(set.layout.ramps.length).toBe(set.brief.ramps.length);
    for (const { name, brief } of set.layout.ramps) {
      const [view, ...more] = viewsNamed(set, `profile ${name}`);
      expect(more).toEqual([]);
      const h = brief.dockHeight;
      const { surface } = brief;
      if (surface.kind === 'stepped') {
        const n = Math.ceil(h / 3.5 - 1e-9);
        for (let i = 1; i < n; i += 1) expect([name, i, count(view!, across, i * surface.tread)]).toEqual([name, i, expect.toSatisfy((times: number) => times >= 1)]);
        for (let i = 1; i <= n; i += 1) expect([name, i, count(view!, upright, (i * h) / n) >= 1]).toEqual([name, i, true]);
        const run = (n - 1) * surface.tread;
        expect(count(view!, 'aligned', Math.hypot(run, h - h / n))).toBe(1);
      } else {
        expect(count(view!, across, h / Math.tan(surface.slope))).toBe(1);
        expect(count(view!, 'aligned', h / Math.sin(surface.slope))).toBe(1);
      }
      expect(count(view!, upright, h)).toBeGreaterThanOrEqual(1);
      if (brief.dockLength > 0) expect(count(view!, across, brief.dockLength)).toBeGreaterThanOrEqual(1);
    }
  });

  it('of juniper-flat shows both slopes as angles', () => {
    const set = sets[0]![1];
    for (const [name, slope] of [['load-1', Math.atan2(48 / 14, 14)], ['unload-1', Math.PI / 9]] as const) {
      expect(count(viewsNamed(set, `profile ${name}`)[0]!, 'angle', slope)).toBe(1);
    }
  });
});

describe('the deck of a cleated ramp', () => {
  it.each(sets)('%s: every cleat to its lower edge, each stretch from its own beginning', (_, set) => {
    for (const { name, brief } of set.layout.ramps) {
      if (brief.surface.kind !== 'cleated') continue;
      const pitch = 8 + brief.surface.cleat;
      const fit = Math.floor(brief.dockHeight / Math.sin(brief.surface.slope) / pitch + 1e-9);
      const starts = viewsNamed(set, `deck ${name}`).flatMap(({ sheet, view, dimensions }) => {
        // The datum of a stretch on the paper: the view is laid out from the foot, so its own place is among the cleats or the foot.
        const zero = dimensions[0]!.from.x;
        expect(new Set(dimensions.map((item) => item.from.x)).size).toBe(1);
        return dimensions.map((item) => ({ view: `${sheet.number} ${view.id}`, value: item.value, zero, scale: view.scale }));
      });
      let from = 0;
      let last = 0;
      const found: number[] = [];
      let seen = starts[0]?.view;
      for (const { view, value } of starts) {
        if (view !== seen) { from = last; seen = view; }
        last = from + value;
        found.push(last);
      }
      for (let i = 0; i < fit; i += 1) expect([name, i, found.some((value) => same(value, 8 + i * pitch))]).toEqual([name, i, true]);
    }
  });
});

describe('the fences of a ramp', () => {
  it.each(sets)('%s: posts from one datum, rail centers plumb from the line, each side', (_, set) => {
    for (const ramp of set.layout.ramps) {
      for (const fence of set.layout.fences.filter(({ run }) => run === ramp.name)) {
        const views = viewsNamed(set, `slope ${ramp.name} ${fence.side}`);
        const posts = [...new Set(fence.spans.flatMap((span) => span.posts))];
        expect(views.reduce((sum, { dimensions }) => sum + dimensions.filter(across).length, 0)).toBe(posts.length - 1);
        const whole = views.reduce((sum, { dimensions }) => sum + Math.max(...valuesOf(dimensions.filter(across))), 0);
        expect(whole).toBeCloseTo(ramp.length, 6);
        for (const view of views) for (const row of fence.section.rows) expect([view.view.id, row, count(view, upright, row)]).toEqual([view.view.id, row, 1]);
      }
    }
  });

  it.each(sets)('%s: stand on posts as tall as the line and the fence over it', (_, set) => {
    for (const ramp of set.layout.ramps) {
      for (const post of set.layout.posts.filter(({ run }) => run === ramp.name)) {
        const s = ramp.brief.kind === 'load' ? post.u : ramp.length - post.u;
        const fence = set.layout.fences.find(({ run, side }) => run === post.run && side === post.side)!;
        expect(post.length - post.hole.depth - fence.brief.height).toBeCloseTo(lineHeight(ramp.figures, s), 9);
      }
    }
  });
});
