import { inches, toDegrees, type Inches, type Radians } from '../base/quantity.ts';
import { CUT_STEP } from '../base/tolerance.ts';
import { type Brief } from '../brief/types.ts';
import { chord, gaugeChord, gaugeRise, orderLength, rise, setRadius, type EndCut, type Parts, type Piece } from '../parts/index.ts';
import { say } from '../text/index.ts';
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
  /** Which setting of the rolls it goes through, from 1. */
  readonly rollOrder: number;
  /** The straight that the rolls hold at each end, trimmed after. */
  readonly grip: Inches;
  /** How far the concave side stands off the gauge chord while the piece is in the rolls; null where it is tighter than the chord is long. */
  readonly setGaugeRise: Inches | null;
  /** How its start and its other end are cut: the end that is not square is its start. */
  readonly cuts: readonly [EndCut['kind'], EndCut['kind']];
}

/**
 * The bend schedule, one row a mark, in the order of rolling: section by section, from the largest radius down, so that the rolls are only
 * ever closed from one setting to the next (common practice, no source); the longest pieces of a setting first. Rails only: a skin is sheet, bent round the rails as it is hung, and has
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
  const rows = [...marks.values()].map((alike): Omit<BendRow, 'rollOrder'> => {
    const piece = alike[0]!;
    const size = sections.get(piece.section)?.across;
    const { bend } = piece;
    if (size === undefined || bend === null) throw new Error(`a rolled rail of a section that no fence has: ${piece.section}`);
    const { radius, angle } = bend;
    const insideRadius = inches(radius - size / 2);
    const set = setRadius(radius, brief.shop.springback);
    const inSet = set - size / 2;
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
      setRadius: set,
      grip: brief.shop.grip,
      setGaugeRise: gauge <= 2 * inSet ? gaugeRise(inSet, gauge) : null,
      cuts: startFirst(piece.ends),
    };
  });
  return inRollingOrder(rows);
}

function startFirst([first, second]: Piece['ends']): BendRow['cuts'] {
  return first.kind === 'square' ? [second.kind, first.kind] : [first.kind, second.kind];
}

function inRollingOrder(rows: readonly Omit<BendRow, 'rollOrder'>[]): readonly BendRow[] {
  const sorted = rows.toSorted((a, b) => bySection(a.section, b.section) || b.axisRadius - a.axisRadius || b.arcLength - a.arcLength);
  let rollOrder = 0;
  return sorted.map((row, i) => {
    const before = sorted[i - 1];
    if (before?.section !== row.section || before.axisRadius - row.axisRadius > CUT_STEP) rollOrder += 1;
    return { ...row, rollOrder };
  });
}

const bySection = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Columns of `bends.csv`; from `roll_order` on they are ours. How a piece is marked is one rule for all: looked along from its start, the
 * inside of the bend on the left, the top line is up, and the pipe's weld seam on it or underneath.
 */
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
    figure('integer', 'roll_order', (row) => row.rollOrder),
    size('grip', (row) => row.grip),
    size('set_gauge_rise', (row) => row.setGaugeRise),
    text('start_end', (row) => say(`bend.cut.${row.cuts[0]}`)),
    text('other_end', (row) => say(`bend.cut.${row.cuts[1]}`)),
    text('inside_face', () => say('bend.inside')),
    text('top_line', () => say('bend.top')),
    text('weld_seam', () => say('bend.seam')),
  ];
}
