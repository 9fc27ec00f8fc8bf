import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { bendRows, type BendRow } from '../../core/schedules/index.ts';
import { fences, makeBrief, section } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';

const rowsOf = (brief: Brief): readonly BendRow[] => bendRows(brief, partsOf(brief));

describe('the bend schedule of lapped and of coped rails', () => {
  it('has every rolled rail, one row a mark, and nothing else', () => {
    for (const construction of ['lapped', 'coped'] as const) {
      const brief = makeBrief({ fences: fences({ construction }) });
      const { pieces } = partsOf(brief);
      const rows = rowsOf(brief);
      expect(new Set(rows.map((row) => row.mark)).size).toBe(rows.length);
      const rolled = pieces.filter((piece) => piece.kind === 'rail' && piece.bend !== null);
      expect(rows.reduce((sum, row) => sum + row.quantity, 0)).toBe(rolled.length);
      expect(new Set(rows.map((row) => row.mark))).toEqual(new Set(rolled.map((piece) => piece.mark)));
    }
  });

  // Geometry contract, Bends, worked out here with plain trigonometry.
  it.each(['lapped', 'coped'] as const)('holds together: angle, chord, rise, gauge, order length, set radius (%s)', (construction) => {
    const brief = makeBrief({ fences: fences({ construction }), shop: { springback: 0.04, grip: inches(9.5), gaugeChord: inches(40) } });
    for (const row of rowsOf(brief)) {
      const half = row.arcLength / row.axisRadius / 2;
      expect(row.angle).toBeCloseTo(2 * half, 12);
      expect(row.chord).toBeCloseTo(2 * row.axisRadius * Math.sin(half), 8);
      expect(row.rise).toBeCloseTo(row.axisRadius - row.axisRadius * Math.cos(half), 8);
      expect(row.insideRadius).toBeCloseTo(row.axisRadius - 2.375 / 2, 9);
      expect(row.outsideRadius - row.insideRadius).toBeCloseTo(2.375, 9);
      const inside = 2 * row.insideRadius * Math.sin(half);
      expect(row.gaugeChord).toBe(40 > 0.9 * inside ? Math.floor(0.9 * inside) : 40);
      // A welder's chord and rise give the radius back: c²/(8s) + s/2.
      expect(row.gaugeChord ** 2 / (8 * row.gaugeRise) + row.gaugeRise / 2).toBeCloseTo(row.insideRadius, 6);
      expect(row.orderLength).toBeCloseTo(row.arcLength + 19, 9);
      expect(row.setRadius).toBeCloseTo(row.axisRadius * 0.96, 9);
    }
  });

  it('takes the gauge chord down where a piece is short', () => {
    const rows = rowsOf(makeBrief({ fences: fences({ construction: 'coped', postSpacing: inches(36) }) }));
    for (const row of rows) {
      const inside = 2 * row.insideRadius * Math.sin(row.angle / 2);
      expect(row.gaugeChord).toBeLessThan(36);
      expect(row.gaugeChord).toBe(Math.floor(0.9 * inside));
    }
    expect(rows.length).toBeGreaterThan(0);
  });

  it('takes a rectangular rail\'s outward size', () => {
    const tube = section('tube 2 x 3 x 3/16');
    const [row] = rowsOf(makeBrief({ fences: fences({ rail: tube }) }));
    expect(row!.outsideRadius - row!.insideRadius).toBeCloseTo(tube.across, 9);
  });
});
