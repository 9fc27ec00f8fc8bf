import { describe, expect, it } from 'vitest';
import { inches, radians } from '../../core/base/quantity.ts';
import { type Parts, type Piece } from '../../core/parts/index.ts';
import { bendColumns, bendRows } from '../../core/schedules/index.ts';
import { writeCsv } from '../../core/writers/csv.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { randomWorked, work } from './project.ts';

/** A rolled rail of the project's pieces with its radius and length replaced. */
function oneRail(radius: number, length: number): Parts {
  const { parts } = work(makeBrief());
  const rail = parts.pieces.find((piece) => piece.kind === 'rail' && piece.bend !== null)!;
  const piece: Piece = { ...rail, length: inches(length), bend: { radius: inches(radius), angle: radians(length / radius) } };
  return { pieces: [piece], marks: {}, hardware: [] };
}

const DEGREE = Math.PI / 180;

describe('the bend schedule', () => {
  // Figures of the geometry contract, each worked again here from the circle.
  it('holds the worked values of a 20° piece at 145.2921', () => {
    const [row] = bendRows(makeBrief(), oneRail(145.2921, 145.2921 * 20 * DEGREE));
    expect(row!.chord).toBeCloseTo(50.4594, 4);
    expect(row!.rise).toBeCloseTo(2.2073, 4);
    expect(row!.angle / DEGREE).toBeCloseTo(20, 9);
    expect(row!.insideRadius).toBeCloseTo(145.2921 - 2.375 / 2, 9);
    expect(row!.outsideRadius).toBeCloseTo(145.2921 + 2.375 / 2, 9);
    expect(row!.gaugeChord).toBe(36);
    expect(row!.orderLength).toBeCloseTo(145.2921 * 20 * DEGREE + 16, 9);
  });

  it('holds the worked sagitta: radius 144, chord 24', () => {
    const brief = makeBrief({ shop: { gaugeChord: inches(24) } });
    const [row] = bendRows(brief, oneRail(144 + 2.375 / 2, 80));
    expect(row!.gaugeChord).toBe(24);
    expect(row!.gaugeRise).toBeCloseTo(0.500871, 6);
  });

  it('takes a gauge chord down to a whole inch of a short piece', () => {
    const [row] = bendRows(makeBrief(), oneRail(100, 30));
    const inside = 2 * (100 - 2.375 / 2) * Math.sin(0.15);
    expect(row!.gaugeChord).toBe(Math.floor(0.9 * inside));
    expect(row!.gaugeChord).toBeLessThan(36);
  });

  it('sets the rolls smaller by the springback', () => {
    const [row] = bendRows(makeBrief({ shop: { springback: 0.1 } }), oneRail(200, 100));
    expect(row!.setRadius).toBeCloseTo(180, 9);
  });

  it('has one row for each mark of every rolled rail, with the pieces counted and the radii to the two faces', () => {
    for (const { brief, parts } of [work(makeBrief()), ...randomWorked(60)]) {
      const bent = parts.pieces.filter((piece) => piece.kind === 'rail' && piece.bend !== null);
      const rows = bendRows(brief, parts);
      expect(rows.map((row) => row.mark).toSorted()).toEqual([...new Set(bent.map((piece) => piece.mark))].toSorted());
      for (const row of rows) {
        const pieces = bent.filter((piece) => piece.mark === row.mark);
        expect(row.quantity).toBe(pieces.length);
        expect((row.insideRadius + row.outsideRadius) / 2).toBeCloseTo(row.axisRadius, 9);
        // Half the chord and the rise of an arc are the legs of a triangle on a quarter of its angle.
        if (row.angle < 3) expect(Math.atan2(row.rise, row.chord / 2)).toBeCloseTo(row.angle / 4, 9);
        const off = row.insideRadius - row.gaugeRise;
        expect(Math.hypot(off, row.gaugeChord / 2)).toBeCloseTo(row.insideRadius, 7);
        expect(row.orderLength).toBeCloseTo(pieces[0]!.length + 2 * brief.shop.grip, 9);
      }
    }
  });

  it('comes in the order of rolling: settings from 1 within it, each of one section and radius, from the largest radius of a section down', () => {
    for (const { brief, parts } of [work(makeBrief()), ...randomWorked(30)]) {
      const rows = bendRows(brief, parts);
      const settings = [...new Set(rows.map((row) => row.rollOrder))];
      expect(settings).toEqual(settings.map((_, i) => i + 1));
      rows.slice(1).forEach((row, i) => {
        const before = rows[i]!;
        if (row.section === before.section) expect(row.axisRadius).toBeLessThanOrEqual(before.axisRadius + 1e-9);
        expect(row.rollOrder === before.rollOrder).toBe(row.section === before.section && before.axisRadius - row.axisRadius < 1e-4);
        if (row.rollOrder === before.rollOrder) expect(row.arcLength).toBeLessThanOrEqual(before.arcLength);
      });
      for (const row of rows) expect(row.cuts[0] === 'square').toBe(row.cuts.every((cut) => cut === 'square'));
    }
  });

  it('gauges a piece in the rolls at the radius that they are set to', () => {
    const [row] = bendRows(makeBrief({ shop: { springback: 0.1 } }), oneRail(200, 100));
    const inside = 180 - 2.375 / 2;
    expect(Math.hypot(inside - row!.setGaugeRise!, row!.gaugeChord / 2)).toBeCloseTo(inside, 9);
    expect(row!.setGaugeRise).toBeGreaterThan(row!.gaugeRise);
  });

  it('writes the columns of the contract, and ours to their right', () => {
    const { brief, parts } = work(makeBrief());
    const [header] = writeCsv(bendColumns('in'), bendRows(brief, parts)).split('\r\n');
    expect(header).toBe('mark,quantity,section,axis_radius,inside_radius,outside_radius,angle_deg,arc_length,chord,rise,gauge_chord,gauge_rise,order_length,set_radius,roll_order,grip,set_gauge_rise,start_end,other_end,inside_face,top_line,weld_seam');
  });
});
