/** Steel from the front or the side: heights and places from one datum each, and its marks in a row above it. */
import { inches } from '../base/quantity.ts';
import { sheetPoint, viewPoint } from '../base/points.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { bandHeight, bandWidth } from '../drafting/band.ts';
import { measureText, printSize } from '../drafting/kit.ts';
import { type BandLabel, type CalloutSpec, type DimensionSpec, type Shape, type View } from '../drafting/model.ts';
import { runningDepth } from '../drafting/running.ts';
import { footHeight } from '../drafting/view.ts';
import { type Block } from './flow.ts';
import { type Page } from './input.ts';
import { type Scale } from './scales.ts';

/** In inches of steel; heights from 0. */
export interface FrontView {
  readonly id: string;
  readonly title: string;
  readonly label: string;
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
  readonly shapes: readonly Shape[];
  readonly labels: readonly BandLabel[];
  readonly callouts: readonly CalloutSpec[];
  readonly dimensions: (h: number) => readonly DimensionSpec[];
  /** Where the places in `widths` are measured from. */
  readonly datum: number;
  readonly widths: readonly number[];
  readonly heights: readonly number[];
}

/** Paper right of the steel for words there, letter heights. */
export const RIGHT = 14;
/** The least width of a view, letter heights. */
const LEAST = 36;

/** Of figures that print alike one is enough. */
function ascending(values: readonly number[]): readonly number[] {
  const sorted = values.filter((value) => value > SAME_LENGTH).toSorted((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || value - sorted[i - 1]! > 1 / 32);
}

/** Paper that the heights take left of the steel. */
export function besideSteel(page: Page, heights: readonly number[]): number {
  const { kit } = page;
  return runningDepth(kit, 3 * kit.h, longestOf(page, heights)) + 0.05;
}

const longestOf = ({ kit }: Page, values: readonly number[]): number => Math.max(0, ...values.map((value) => measureText(kit, printSize(kit, value))));

/** The view at a scale, as large as its figures and marks ask for. */
export function frontBlock(page: Page, view: FrontView, scale: Scale): Block {
  const { kit } = page;
  const s = scale.scale;
  const heights = ascending(view.heights);
  const widths = ascending(view.widths.map((x) => x - view.datum));
  const side = besideSteel(page, heights);
  const marks = view.labels.reduce((sum, { text }) => sum + bandWidth(kit, text), 0);
  const row = kit.up + kit.down + 2 * kit.clear + 0.006;
  const datum = (view.datum - view.left) * s;
  const width = Math.min(page.room.width, Math.max(
    side + (view.right - view.left) * s + RIGHT * kit.h, marks + 2 * kit.h, LEAST * kit.h, side + datum + (widths.length + 2) * row,
  ));
  const foot = footHeight(kit, { title: view.title, scaleText: scale.text }, page.block, width);
  const deep = Math.max(-view.low * s + kit.h, widths.length === 0 ? 2 * kit.h : runningDepth(kit, 3 * kit.h, longestOf(page, widths)) + 0.02);
  const tall = view.high * s + kit.up;
  const below = Math.max(deep, (heights.length + 1) * row - tall);
  const height = foot + below + view.high * s + (view.labels.length > 0 ? bandHeight(kit) : 5 * kit.h);
  return {
    width, height, label: view.label,
    place: (x, y) => {
      const placed: View = {
        id: view.id, title: view.title, scale: s, scaleText: scale.text,
        at: sheetPoint(x + side - view.left * s, y + foot + below),
        box: { x, y, width, height },
        shapes: view.shapes,
        dimensions: view.dimensions(kit.h),
        runnings: [
          // The widths' figures keep to the right of the heights' line: heights that had to spread slope down to its left.
          ...(widths.length === 0 ? [] : [{
            along: 'x' as const, datum: viewPoint(view.datum, 0), at: widths.map((at) => viewPoint(view.datum + at, 0)), line: 3 * kit.h,
            limits: [datum + 3 * kit.h - kit.clear, width - side - datum] as const,
          }]),
          ...(heights.length === 0 ? [] : [{
            along: 'y' as const, datum: viewPoint(view.left, 0), at: heights.map((at) => viewPoint(view.left, at)), line: 3 * kit.h, limits: [below, tall] as const,
          }]),
        ],
        bands: view.labels.length === 0 ? [] : [{ top: inches(view.high), labels: view.labels }],
        callouts: view.callouts,
      };
      return { views: [placed] };
    },
  };
}
