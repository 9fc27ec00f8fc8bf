import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { floorSlabs } from '../../core/parts/index.ts';
import { concreteRows } from '../../core/schedules/index.ts';
import { makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';

const brief = makeBrief({ chute: { width: inches(28), runs: [straight(240)] }, squeezePad: { length: inches(144), width: inches(120), roof: null } });
const slabs = new Map(floorSlabs(brief, laidOut(brief)).map((slab) => [slab.run, slab]));

describe('floors', () => {
  it('are as large as the ground between the faces: worked by hand', () => {
    // Half a circle of 12 ft: 72 π = 226.19 ft². The pad: 12 by 10 ft. The chute: 28 in by 20 ft.
    expect(slabs.get('crowd-pen')!.area / 144).toBeCloseTo(226.1947, 4);
    expect(slabs.get('squeeze-pad')!.area / 144).toBe(120);
    expect(slabs.get('chute')!.area / 144).toBeCloseTo(46.6667, 4);
    // Between 144 and 28 in, 200.9179 deep: 86 · 200.9179.
    expect(slabs.get('junction')!.area).toBeCloseTo(86 * 200.9179, 1);
  });

  it('come to the materials by the cubic yard: 12 ft by 10 ft by 6 in is 60 ft³', () => {
    const row = concreteRows(brief, laidOut(brief)).find(({ section }) => section === 'squeeze-pad')!;
    expect([row.item, row.unit]).toEqual(['concrete', 'yd3']);
    expect(row.quantity).toBeCloseTo(60 / 27, 9);
  });

  it('fall by the brief\'s share along the way of the cattle', () => {
    expect(slabs.get('squeeze-pad')!.drop).toBeCloseTo(144 * 0.02, 9);
    expect(slabs.get('chute')!.drop).toBeCloseTo(240 * 0.02, 9);
  });
});
