import { describe, expect, it } from 'vitest';
import { flatArea } from '../../../core/base/flat-curves.ts';
import { degrees, inches } from '../../../core/base/quantity.ts';
import { rampFigures, type Ramp } from '../../../core/layout/index.ts';
import { rampConcrete, type Piece } from '../../../core/parts/index.ts';
import { plankEdges } from '../../../core/parts/ramps/deck-pieces.ts';
import { laidOut, partsOf } from '../../support/laid-out.ts';
import { LOAD, UNLOAD, withRamp } from '../../support/ramp-briefs.ts';

describe('planks', () => {
  it('are 12 in wide from the foot, the last ripped to what is left (common practice, no source)', () => {
    expect(plankEdges(140.34)).toEqual([0, 12, 24, 36, 48, 60, 72, 84, 96, 108, 120, 132, 140.34]);
    expect(plankEdges(24)).toEqual([0, 12, 24]);
    expect(plankEdges(0)).toEqual([]);
    expect(plankEdges(3)).toEqual([0, 3]);
  });

  it('share with the one before where what is left would be a sliver', () => {
    expect(plankEdges(26)).toEqual([0, 12, 19, 26]);
    expect(plankEdges(28)).toEqual([0, 12, 24, 28]);
  });
});

describe('a cleated ramp', () => {
  const pieces = partsOf(withRamp(UNLOAD)).pieces;
  const of = (kind: Piece['kind']): readonly Piece[] => pieces.filter((piece) => piece.kind === kind);

  it('has the cleats of the geometry contract, square, across its width, under one mark', () => {
    expect(of('cleat')).toHaveLength(14);
    expect(new Set(of('cleat').map(({ mark }) => mark)).size).toBe(1);
    expect(of('cleat')[0]).toMatchObject({ section: 'timber 2 x 2', length: 120 });
  });

  it('is planked over its slope and its dock', () => {
    const wide = of('deck').reduce((sum, { place }) => sum + (place.kind === 'deck' ? place.to - place.from : NaN), 0);
    expect(wide).toBeCloseTo(140.343 + 120, 3);
  });

  it('weighs its timber by the cubic foot', () => {
    // 2 in x 2 in x 10 ft at 50 lb a cubic foot (from memory): 0.2778 ft3.
    expect(of('cleat')[0]!.weight).toBeCloseTo(13.889, 3);
  });
});

describe('the concrete of a stepped ramp', () => {
  const ramp = laidOut(withRamp(LOAD)).ramps[0]!;
  const concrete = rampConcrete(ramp)!;

  it('has a form for each riser, the last one at the dock', () => {
    expect(concrete.forms).toHaveLength(14);
    expect(concrete.forms[0]).toMatchObject({ step: 1, back: 0 });
    expect(concrete.forms[0]!.top).toBeCloseTo(3.4286, 4);
    expect(concrete.forms.at(-1)).toEqual({ step: 14, back: 182, top: 48 });
  });

  it('fills the steps and the dock solid', () => {
    // Steps 1 to 13 of 48/14 in: 14 in of tread each, (13·14/2)·48/14 = 312 in of height; the dock 60 in of 48; 30 in wide. By hand.
    expect(concrete.volume).toBeCloseTo((312 * 14 + 48 * 60) * 30, 6);
  });

  it('is none where the ramp is cleated', () => {
    const figures = rampFigures({ dockHeight: inches(48), dockLength: inches(60), surface: { kind: 'cleated', slope: degrees(20), cleat: inches(2) } });
    expect(rampConcrete({ ...ramp, figures } satisfies Ramp)).toBeNull();
  });
});

describe('the template of a stepped ramp\'s forms', () => {
  const [form, ...more] = partsOf(withRamp(LOAD)).pieces.filter(({ kind }) => kind === 'form');

  it('is one plate of three steps, cut as they rise', () => {
    expect(more).toEqual([]);
    // 14 in treads, 48/14 in risers: three of them in 42 in.
    expect([form!.length, form!.section]).toEqual([42, '14 ga']);
    expect(form!.flatHeight).toBeCloseTo(3 * (48 / 14), 6);
    // By hand: one, two and three risers high over a tread each.
    expect(flatArea(form!.flat!)).toBeCloseTo(14 * (48 / 14) * 6, 6);
    // 14 ga is 0.0747 in (gauge table) and 3.125 lb a square foot as it prints.
    expect(form!.weight / ((14 * 48 * 6) / 14 / 144)).toBeCloseTo(3.125, 1);
  });

  it('is none for a cleated ramp', () => {
    expect(partsOf(withRamp(UNLOAD)).pieces.some(({ kind }) => kind === 'form')).toBe(false);
  });
});
