import { inches, toDegrees, type Inches, type Radians } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { chord, gaugeChord, gaugeRise, orderLength, rise, setRadius, type Parts, type Piece } from '../parts/index.ts';
import { figure, length, text, userText, type Column, type Units } from './column.ts';
import { railSections } from './rail-sections.ts';

/** All pieces of one mark that go through the rolls. */
export interface BendRow {
  readonly mark: string;
  readonly quantity: number;
  readonly section: string;
  readonly axisRadius: Inches;
  readonly insideRadius: Inches;
  readonly outsideRadius: Inches;
  readonly angle: Radians;
  /** Along the axis; the long point of a coped rail. */
  readonly arcLength: Inches;
  readonly chord: Inches;
  readonly rise: Inches;
  /** The straightedge to lay on the concave side, and how far that side stands off its middle. */
  readonly gaugeChord: Inches;
  readonly gaugeRise: Inches;
  readonly orderLength: Inches;
  readonly setRadius: Inches;
}

/**
 * The bend schedule, one row a mark, in the order of the walk. Rails only: a skin is sheet, bent round the rails as it is hung, and has
 * neither an axis to set rolls by nor ends for them to hold.
 */
export function bendRows(brief: Brief, parts: Parts): readonly BendRow[] {
  const marks = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    if (piece.kind !== 'rail' || piece.bend === null) continue;
    const alike = marks.get(piece.mark);
    if (alike === undefined) marks.set(piece.mark, [piece]);
    else alike.push(piece);
  }
  const sections = railSections(brief);
  return [...marks.values()].map((alike) => {
    const piece = alike[0]!;
    const size = sections.get(piece.section)?.across;
    const { bend } = piece;
    if (size === undefined || bend === null) throw new Error(`a rolled rail of a section that no fence has: ${piece.section}`);
    const { radius, angle } = bend;
    const insideRadius = inches(radius - size / 2);
    const gauge = gaugeChord(insideRadius, angle, brief.shop.gaugeChord);
    return {
      mark: piece.mark,
      quantity: alike.length,
      section: piece.section,
      axisRadius: radius,
      insideRadius,
      outsideRadius: inches(radius + size / 2),
      angle,
      arcLength: piece.length,
      chord: chord(radius, angle),
      rise: rise(radius, angle),
      gaugeChord: gauge,
      gaugeRise: gaugeRise(insideRadius, gauge),
      orderLength: orderLength(piece.length, brief.shop.grip),
      setRadius: setRadius(radius, brief.shop.springback),
    };
  });
}

/** Columns of `bends.csv`. */
export function bendColumns(units: Units): readonly Column<BendRow>[] {
  const size = length(units);
  return [
    text('mark', (row) => row.mark),
    figure('integer', 'quantity', (row) => row.quantity),
    userText('section', (row) => row.section),
    size('axis_radius', (row) => row.axisRadius),
    size('inside_radius', (row) => row.insideRadius),
    size('outside_radius', (row) => row.outsideRadius),
    figure('angle', 'angle_deg', (row) => toDegrees(row.angle)),
    size('arc_length', (row) => row.arcLength),
    size('chord', (row) => row.chord),
    size('rise', (row) => row.rise),
    size('gauge_chord', (row) => row.gaugeChord),
    size('gauge_rise', (row) => row.gaugeRise),
    size('order_length', (row) => row.orderLength),
    size('set_radius', (row) => row.setRadius),
  ];
}
