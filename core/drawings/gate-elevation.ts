/** One gate from the front: its leaf and what it hangs or slides on, every piece marked, heights and widths from one datum each. */
import { inches } from '../base/quantity.ts';
import { PENS } from '../drafting/kit.ts';
import { type BandLabel, type CalloutSpec, type Shape } from '../drafting/model.ts';
import { type Block } from './flow.ts';
import { frontBlock } from './front-view.ts';
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

/** A gate at the largest scale of its own, or at a smaller one where `scale` gives it. */
export function gateBlock(page: Page, gate: GateView, scale: Scale = gateScales(page, gate)[0]!): Block {
  const { id, title, label, left, right, top, datum, widths, heights, callouts } = gate;
  return frontBlock(page, {
    id, title, label, left, right, low: 0, high: top, shapes: [...gate.around, ...gateShapes(gate.pieces)], labels: bandLabels(gate), callouts,
    dimensions: () => [], datum, widths, heights,
  }, scale);
}

/** The scales at which a gate may be drawn, the largest first. */
export function gateScales(page: Page, gate: GateView): readonly Scale[] {
  const list = scalesOf(page.block.units);
  const fits = list.filter(({ scale }) =>
    scale <= 1 / 8 && gate.top * scale <= page.room.height * TALL && (gate.right - gate.left) * scale <= page.room.width * WIDE);
  return fits.length === 0 ? list.slice(-1) : fits;
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
