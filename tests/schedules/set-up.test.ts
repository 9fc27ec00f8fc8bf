/** Setting up: vent holes by area, lifts against sums over the pieces, match marks against where rails end, every mark in the order of erection. */
import { describe, expect, it } from 'vitest';
import { inches, pounds } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts, ventHole } from '../../core/parts/index.ts';
import { erectionSteps, lifts, spliceRows, ventRows } from '../../core/schedules/index.ts';
import { fences, makeBrief, section } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

const designOf = (brief: Brief) => ({ brief, layout: laidOut(brief), parts: partsOf(brief) });

describe('vent holes', () => {
  // Worked by hand from the shares (practice of galvanizers, from memory): 2 in pipe is 2.067 inside, 45 %: 1.387, so 1 7/16; two of 0.981, so 1.
  it('let their share of the inside through, to the next 1/16', () => {
    expect(ventHole(section('pipe 2 sch 40'))).toEqual({ section: 'pipe 2 sch 40', inside: expect.closeTo(2.067, 9) as number, one: 1.4375, two: 1 });
    const four = ventHole(section('pipe 4 sch 40'));
    expect(Math.PI * (four.one / 2) ** 2).toBeGreaterThanOrEqual(0.3 * Math.PI * (4.026 / 2) ** 2);
    expect(Math.PI * ((four.one - 1 / 16) / 2) ** 2).toBeLessThan(0.3 * Math.PI * (4.026 / 2) ** 2);
  });

  it('are asked for where the project is galvanized, every hollow section once, and nowhere else', () => {
    const { brief, layout, parts } = designOf(makeBrief({ shop: { coating: 'galvanized' } }));
    const bars = new Set(parts.pieces.filter(({ flatHeight }) => flatHeight === null).map((piece) => piece.section));
    expect(ventRows(brief, layout, parts).map((row) => row.section)).toEqual([...bars].sort());
    expect(ventRows(makeBrief(), layout, parts)).toEqual([]);
  });
});

describe('lifts', () => {
  it('has each coped bay as a panel that weighs its rails and its skins, whole', () => {
    const { brief, layout, parts } = designOf(makeBrief({ fences: fences({ construction: 'coped' }) }));
    const all = lifts(brief, layout, parts);
    const panels = all.filter(({ what }) => what === 'panel');
    const steel = parts.pieces.filter(({ kind }) => kind === 'rail' || kind === 'skin').reduce((sum, { weight }) => sum + weight, 0);
    // Panels of one mark weigh alike but for their skins' ends.
    const lifted = panels.reduce((sum, { weight, count }) => sum + weight * count, 0);
    expect(Math.abs(lifted / steel - 1)).toBeLessThan(0.02);
  });

  it('takes as many people as the weight asks for, a hoist over four, and a truck that holds it', () => {
    const one = { ...makeBrief().shop, handLift: pounds(60), truck: { length: inches(100), width: inches(50), load: pounds(5000) } };
    const { brief, layout, parts } = designOf(makeBrief({ shop: one }));
    const gate = lifts(brief, layout, parts).find(({ what }) => what === 'gate')!;
    const leaf = parts.pieces.filter(({ place }) => place.kind === 'gate' && place.moves).reduce((sum, { weight }) => sum + weight, 0);
    expect(gate.weight).toBeCloseTo(leaf, 9);
    expect(gate.people).toBe(leaf > 240 ? null : Math.ceil(leaf / 60));
    expect(gate.truck).toBe('too-long');
    for (const lift of lifts(brief, layout, parts).filter(({ what }) => what === 'piece')) expect(lift.weight).toBeGreaterThan(60);
  });
});

describe('random briefs', () => {
  const made = Array.from({ length: 60 }, (_, seed) => {
    const brief = randomBriefObject(seed);
    const layout = layOut(brief);
    const parts = layout.ok ? makeParts(brief, layout.layout) : null;
    return layout.ok && parts?.ok === true ? { brief, layout: layout.layout, parts: parts.parts } : null;
  }).filter((one) => one !== null);

  it('erect every piece once, the pivot post first', () => {
    for (const { layout, parts } of made) {
      const steps = erectionSteps(layout, parts);
      expect(steps[0]!.work).toBe('pivot');
      expect(steps.reduce((sum, { marks }) => sum + marks.reduce((all, { count }) => all + count, 0), 0)).toBe(parts.pieces.length);
    }
  });

  it('have a match mark wherever one rail begins as another of its row ends, within a run', () => {
    for (const { layout, parts } of made) {
      const lapped = new Set(layout.fences.filter(({ brief }) => brief.construction === 'lapped').map(({ run, side }) => `${run} ${side}`));
      const rails = parts.pieces.flatMap(({ run, side, place }) => (place.kind === 'rail' && lapped.has(`${run} ${side}`) ? [{ at: `${run} ${side} ${String(place.row)}`, from: place.from, to: place.to }] : []));
      const meet = rails.filter(({ at, to }) => rails.some((other) => other.at === at && Math.abs(other.from - to) < 1e-6)).length;
      expect(spliceRows(layout, parts).reduce((sum, { posts }) => sum + posts.length, 0)).toBe(meet);
    }
  });

  it('are lifted in finite sizes', () => {
    expect(made.length).toBeGreaterThan(30);
    for (const { brief, layout, parts } of made) {
      for (const lift of lifts(brief, layout, parts)) expect([lift.long, lift.high, lift.deep, lift.weight].every((value) => Number.isFinite(value) && value >= 0)).toBe(true);
    }
  });
});
