/** One gate from the front: its leaf and what it hangs or slides on, every piece marked, heights and widths from one datum each. */
import { inches } from '../base/quantity.ts';
import { sheetPoint, viewPoint } from '../base/points.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { bandHeight, bandWidth } from '../drafting/band.ts';
import { measureText, PENS, printSize } from '../drafting/kit.ts';
import { type BandLabel, type CalloutSpec, type Shape, type View } from '../drafting/model.ts';
import { runningDepth } from '../drafting/running.ts';
import { footHeight } from '../drafting/view.ts';
import { type Block } from './flow.ts';
import { gateShapes, straight, type GatePiece } from './gate-outline.ts';
import { type Page } from './input.ts';
import { scalesOf, type Scale } from './scales.ts';

/** What a gate's elevation shows, in inches of steel; x and y as in `GateOutline`. */
export interface GateView {
  readonly id: string;
  readonly title: string;
  readonly label: string;
  readonly pieces: readonly GatePiece[];
  /** Posts, ground, hinges: what is not a piece of the gate. */
  readonly around: readonly Shape[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
  /** Where widths are measured from. */
  readonly datum: number;
  readonly widths: readonly number[];
  readonly heights: readonly number[];
  readonly callouts: readonly CalloutSpec[];
}

/** Share of a page's height and width that the steel may take. */
const TALL = 0.5;
const WIDE = 0.62;

export function gateBlock(page: Page, gate: GateView): Block {
  const scale = scaleFor(page, gate);
  const { kit } = page;
  const s = scale.scale;
  const heights = ascending(gate.heights);
  const widths = ascending(gate.widths.filter((x) => x > gate.datum + SAME_LENGTH));
  const longest = (values: readonly number[]): number => Math.max(...values.map((value) => measureText(kit, printSize(kit, value))));
  const side = runningDepth(kit, 3 * kit.h, longest(heights)) + 0.05;
  const deep = runningDepth(kit, 3 * kit.h, longest(widths.map((x) => x - gate.datum)));
  const labels = bandLabels(gate);
  const marks = labels.reduce((sum, label) => sum + bandWidth(kit, label.text), 0);
  const wide = (gate.right - gate.left) * s;
  const width = Math.min(page.room.width, Math.max(side + wide + 14 * kit.h, 34 * kit.h, marks + 2 * kit.h));
  const foot = footHeight(kit, { title: gate.title, scaleText: scale.text }, page.block, width);
  const tall = gate.top * s + kit.up;
  const spreadOut = (heights.length + 1) * (kit.up + kit.down + 2 * kit.clear + 0.006) - tall;
  const below = Math.max(deep, spreadOut);
  const height = foot + below + gate.top * s + bandHeight(kit);
  // The widths' figures keep to the right of the heights' line: heights that had to spread slope down to its left.
  const datum = (gate.datum - gate.left) * s;
  return {
    width,
    height,
    label: gate.label,
    place: (x, y) => {
      const view: View = {
        id: gate.id,
        title: gate.title,
        scale: s,
        scaleText: scale.text,
        at: sheetPoint(x + side - gate.left * s, y + foot + below),
        box: { x, y, width, height },
        shapes: [...gate.around, ...gateShapes(gate.pieces)],
        dimensions: [],
        runnings: [
          { along: 'x', datum: viewPoint(gate.datum, 0), at: widths.map((at) => viewPoint(at, 0)), line: 3 * kit.h, limits: [datum + 3 * kit.h - kit.clear, width - side - datum] },
          { along: 'y', datum: viewPoint(gate.left, 0), at: heights.map((at) => viewPoint(gate.left, at)), line: 3 * kit.h, limits: [below, tall] },
        ],
        bands: [{ top: inches(gate.top), labels }],
        callouts: gate.callouts,
      };
      return { views: [view] };
    },
  };
}

/** Of figures that print alike one is enough. */
function ascending(values: readonly number[]): number[] {
  const sorted = values.filter((value) => value > SAME_LENGTH).toSorted((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || value - sorted[i - 1]! > 1 / 32);
}

function scaleFor(page: Page, gate: GateView): Scale {
  const list = scalesOf(page.block.units);
  const fits = ({ scale }: Scale): boolean =>
    scale <= 1 / 8 && gate.top * scale <= page.room.height * TALL && (gate.right - gate.left) * scale <= page.room.width * WIDE;
  return list.find(fits) ?? list[list.length - 1]!;
}

/** Shares of the leaf's length at which the leaders of its level members and skins drop. */
const RAIL_AT = 0.24;
const BAR_AT = 0.42;
const SKIN_AT = 0.74;

interface Target {
  readonly x: number;
  readonly y: number;
}

/** A mark for each kind of piece: alike ones on one leader where they stand one over another. */
function bandLabels(gate: GateView): BandLabel[] {
  const bars = gate.pieces.flatMap(({ place: { part, outline } }) => (part === 'bar' && outline.kind === 'bar' ? [outline.a.y] : []));
  const groups = new Map<string, { readonly text: string; readonly x: number; readonly targets: { y: ReturnType<typeof inches>; piece: string }[] }>();
  for (const { piece, place } of gate.pieces) {
    const { x, y } = targetOf(place, bars);
    const key = `${piece.mark} ${x.toFixed(3)}`;
    const group = groups.get(key) ?? { text: piece.mark, x, targets: [] };
    group.targets.push({ y: inches(y), piece: piece.key });
    groups.set(key, group);
  }
  return [...groups.values()].map(({ text, x, targets }) => ({ text, x: inches(x), targets }));
}

function targetOf({ part, outline }: GatePiece['place'], bars: readonly number[]): Target {
  if (outline.kind === 'plate') {
    if (outline.corners !== undefined) return middleOf(outline.corners);
    const x = part === 'skin' ? outline.left + (outline.right - outline.left) * SKIN_AT : (outline.left + outline.right) / 2;
    return { x, y: between(outline.bottom, outline.top, bars) };
  }
  const { a, b } = outline;
  const share = part === 'bar' ? BAR_AT : RAIL_AT;
  // A strap lies from corner to corner.
  if (a.x === b.x) return { x: a.x, y: between(a.y, b.y, bars) };
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

/** Inside a convex plate: its corners' mean. */
const middleOf = (corners: readonly Target[]): Target =>
  ({ x: corners.reduce((sum, { x }) => sum + x, 0) / corners.length, y: corners.reduce((sum, { y }) => sum + y, 0) / corners.length });

/** A height near the middle of a piece, in the middle between two bars. */
function between(low: number, high: number, bars: readonly number[]): number {
  const stops = [low, ...bars.filter((y) => y > low && y < high).toSorted((a, b) => a - b), high];
  const i = Math.floor((stops.length - 1) / 2);
  return (stops[i]! + stops[Math.min(i + 1, stops.length - 1)]!) / 2;
}

/** The ground line under a gate. */
export const groundLine = (left: number, right: number): Shape => straight(PENS.thin, left, 0, right, 0);
