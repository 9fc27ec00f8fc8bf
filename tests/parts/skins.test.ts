import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { printFault } from '../../core/brief/print-fault.ts';
import { layOut } from '../../core/layout/index.ts';
import { fitsSheet, makeParts, skinCourses, type Piece } from '../../core/parts/index.ts';
import { fences, makeBrief, sheet, straight, type BriefParts } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';

const STOCK = [[inches(48), inches(120)], [inches(60), inches(120)]] as const;
const skins = (parts: BriefParts, run: string, side: string): readonly Piece[] =>
  partsOf(makeBrief(parts)).pieces.filter((piece) => piece.kind === 'skin' && piece.run === run && piece.side === side);

function faultsOf(parts: BriefParts): readonly string[] {
  const brief = makeBrief(parts);
  const layout = layOut(brief);
  const made = layout.ok ? makeParts(brief, layout.layout) : layout;
  return made.ok ? [] : made.faults.map(printFault);
}

describe('skins', () => {
  it('are as long as their mid-thickness line: half a sheet out on the pen, half a sheet in on an inner wall', () => {
    const total = (run: string, side: string): number => skins({}, run, side).reduce((sum, piece) => sum + piece.length, 0);
    expect(total('crowd-pen', 'right')).toBeCloseTo((144 + 0.0523) * Math.PI, 6);
    expect(total('chute-2', 'right')).toBeCloseTo((192 - 0.0523) * (Math.PI / 2), 6);
    expect(total('chute-2', 'left')).toBeCloseTo((220 + 0.0523) * (Math.PI / 2), 6);
    expect(skins({}, 'chute-2', 'right')[0]?.bend?.radius).toBeCloseTo(191.9477, 9);
  });

  it('cover as many bays as a stock sheet holds and part on posts', () => {
    // Bays of 60 in: two of them fill a sheet of 120 in exactly.
    expect(skins({}, 'chute-1', 'right').map((piece) => [piece.length, piece.bays])).toEqual([[120, 2]]);
    expect(skins({}, 'alley-1', 'right').map((piece) => [piece.length, piece.bays])).toEqual([[80, 1], [80, 1], [80, 1]]);
  });

  it('stand from solidFrom to solidTo and weigh what their area weighs', () => {
    const [piece] = skins({ fences: fences({ solidFrom: inches(6), solidTo: inches(40) }) }, 'chute-3', 'left');
    expect(piece).toMatchObject({ flatHeight: 34, length: 72, place: { kind: 'skin', bottom: 6, top: 40, from: 0, to: 72 } });
    // 4.375 lb/ft² of 12 ga (Manufacturers' Standard Gauge).
    expect(piece?.weight).toBeCloseTo((4.375 / 144) * 34 * 72, 8);
  });

  it('are none on an open fence or one without a sheet', () => {
    expect(skins({ fences: fences({ solidTo: inches(0) }) }, 'chute-1', 'left')).toEqual([]);
    expect(skins({ fences: fences({ sheet: null }) }, 'chute-1', 'left')).toEqual([]);
  });

  it('are turned upright where the fence is taller than a sheet is wide', () => {
    const tall = { fences: fences({ height: inches(72), solidTo: inches(72), postSpacing: inches(58) }) };
    expect(skins(tall, 'alley-1', 'right').every((piece) => piece.flatHeight === 70 && piece.length <= 60 && piece.bays === 1)).toBe(true);
  });

  it('are made in courses that part on a rail where no sheet holds the height, the fewest from the bottom', () => {
    const tall = fences({ height: inches(96), solidTo: inches(96), postSpacing: inches(96) });
    const [low, high] = skins({ fences: tall }, 'alley-1', 'right').filter((piece) => piece.bay === 1);
    // Rows at 12, 32.7, 53.4, 74.1, 94.8: 53.4 is the highest within 60 in of 2.
    expect(low?.place).toMatchObject({ bottom: 2, top: expect.closeTo(12 + (94.8125 - 12) / 2, 9) as number });
    expect(high?.place).toMatchObject({ bottom: low?.place.kind === 'skin' ? low.place.top : NaN, top: 96 });
    expect(new Set([low?.key, high?.key]).size).toBe(2);
  });

  it('are a fault where a bay is longer than any sheet, and where no rail parts a side that is too tall', () => {
    expect(faultsOf({ alley: { runs: [straight(276), straight(60)] }, fences: fences({ postSpacing: inches(140) }) })).toEqual([
      'fences.crowdPen.postSpacing: a bay of the left fence of alley-1 needs a sheet of 138" by 58", no stock sheet holds it: must be no longer than 120"',
    ]);
    const bare = fences({ height: inches(96), solidTo: inches(96), rails: 2, bottomRail: inches(4) });
    expect(faultsOf({ fences: bare })).toEqual([
      'fences.crowdPen.rails: the left fence of alley-1 is solid for 94", no stock sheet holds it in courses that part on its rails: a taller stock sheet or closer rails are allowed',
    ]);
  });

  it('take half their own thickness into account', () => {
    const thick = { fences: fences({ sheet: sheet('1/4') }) };
    expect(skins(thick, 'crowd-pen', 'right').reduce((sum, piece) => sum + piece.length, 0)).toBeCloseTo(144.125 * Math.PI, 6);
  });
});

describe('courses', () => {
  it('are as few as trying every choice of rails finds', () => {
    const rows = [10, 22, 31, 45, 58, 70, 88].map(inches);
    for (const bay of [40, 55, 100]) {
      for (const top of [44, 60, 91, 96]) {
        const found = skinCourses(STOCK, bay, 2, top, rows);
        const inside = rows.filter((row) => row > 2 && row < top);
        let fewest = Infinity;
        for (let mask = 0; mask < 2 ** inside.length; mask++) {
          const stops = [2, ...inside.filter((_, i) => (mask >> i) % 2 === 1), top];
          if (stops.slice(1).every((stop, i) => fitsSheet(STOCK, bay, stop - stops[i]!))) fewest = Math.min(fewest, stops.length);
        }
        expect([bay, top, found?.length ?? Infinity]).toEqual([bay, top, fewest]);
      }
    }
  });

  it('fit a sheet exactly', () => {
    expect(fitsSheet(STOCK, 120, 60)).toBe(true);
    expect(fitsSheet(STOCK, 60, 120)).toBe(true);
    expect(fitsSheet(STOCK, 60.001, 61)).toBe(false);
  });
});
