import { describe, expect, it } from 'vitest';
import { inches } from '../../../core/base/quantity.ts';
import { type Brief, type OpeningBrief, type RampBrief } from '../../../core/brief/types.ts';
import { layOut } from '../../../core/layout/index.ts';
import { makeBrief } from '../../support/brief-builder.ts';
import { fenceOf, laidOut, partsOf } from '../../support/laid-out.ts';

/** 48 in of 14 risers: 13 treads of 14 in, then a level dock of 60. */
const ramp = (parts: Partial<RampBrief> = {}): RampBrief => ({
  name: 'load-1', kind: 'load', dockHeight: inches(48), width: inches(30), dockLength: inches(60), surface: { kind: 'stepped', tread: inches(14) },
  at: null, heading: null, path: 'ramps[0]', ...parts,
});
const manGate = (at: number, run = 'load-1'): OpeningBrief => ({ kind: 'man-gate', run, side: 'left', at: inches(at), width: inches(14), path: 'openings[0]' });
const brief = (at: number, parts: Partial<RampBrief> = {}): Brief => makeBrief({ ramps: [ramp(parts)], openings: [manGate(at, parts.name)] });
const told = (from: Brief): readonly string[] => {
  const result = layOut(from);
  return result.ok ? result.layout.fouls.map(({ kind }) => kind) : result.faults.map(({ path, code }) => `${path} ${code}`);
};

describe('a gate beside a level dock', () => {
  it('parts its fence between plumb jamb posts as tall as the dock and the fence over it', () => {
    const layout = laidOut(brief(212));
    const { spans } = fenceOf(layout, 'load-1', 'left');
    expect(spans.map(({ skinFrom, skinTo }) => [skinFrom, skinTo])).toEqual([[0, 182], [182, 205], [219, 242]]);
    expect(spans.map(({ start, end }) => [start.kind, end.kind])).toEqual([['free', 'joint'], ['joint', 'jamb'], ['jamb', 'free']]);
    expect(spans[1]!.posts).toEqual([182, 205 - 1.4375]);
    const jambs = layout.posts.filter(({ run, kind }) => run === 'load-1' && kind === 'jamb-post');
    expect(jambs.map(({ u, fenceHeight, length }) => [u, fenceHeight, length])).toEqual([[203.5625, 108, 144], [220.4375, 108, 144]]);
    expect(layout.openings).toEqual([expect.objectContaining({ kind: 'man-gate', run: 'load-1', from: 205, to: 219, station: null })]);
    expect(layout.fouls).toEqual([]);
  });

  it('ends rails and skins at its jambs, and leaves the slope as it was', () => {
    const of = (from: Brief, kind: string) => partsOf(from).pieces.filter((piece) => piece.run === 'load-1' && piece.side === 'left' && piece.kind === kind);
    const on = of(brief(212), 'rail').flatMap(({ place }) => (place.kind === 'rail' ? [[place.from, place.to]] : []));
    expect(new Set(on.filter(([from]) => from! >= 182).map(String))).toEqual(new Set(['182,205', '219,242']));
    const skins = of(brief(212), 'skin').flatMap(({ place }) => (place.kind === 'skin' ? [[place.from, place.to]] : []));
    expect(skins.filter(([from]) => from! >= 182)).toEqual([[182, 205], [219, 242]]);
    const slope = (from: Brief) => of(from, 'rail').filter(({ place }) => place.kind === 'rail' && place.to <= 182).map(({ signature }) => signature);
    expect(slope(brief(212))).toEqual(slope(makeBrief({ ramps: [ramp()] })));
  });

  it('of an unloading ramp counts from the dock that the cattle walk first', () => {
    const down = laidOut(brief(40, { name: 'unload-1', kind: 'unload', dockLength: inches(120) }));
    expect(fenceOf(down, 'unload-1', 'left').spans.map(({ skinFrom, skinTo }) => [skinFrom, skinTo])).toEqual([[0, 33], [47, 120], [120, 302]]);
  });

  it('on the slope, or of a ramp without a dock, is a fault that says where one may stand', () => {
    expect(told(brief(100))).toEqual(['openings[0].at fault.opening-slope']);
    expect(told(brief(100, { dockLength: inches(0) }))).toEqual(['openings[0].at fault.opening-no-dock']);
    expect(told(brief(300))).toEqual(['openings[0].at fault.opening-beyond']);
  });

  it('across the end of the slope is a foul and is left out: just clear, and just not', () => {
    // From the break's post: half the opening, half a jamb post, and two posts' least distance.
    const just = 182 + 7 + 1.4375 + 3.375;
    expect(told(brief(just))).toEqual([]);
    expect(told(brief(just - 0.01))).toEqual(['foul-opening']);
  });
});
