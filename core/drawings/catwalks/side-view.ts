/** A view of steel with its heights and places from one datum each and its marks in a row above it. */
import { inches } from '../../base/quantity.ts';
import { sheetPoint, viewPoint } from '../../base/points.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { bandHeight, bandWidth } from '../../drafting/band.ts';
import { measureText, printSize } from '../../drafting/kit.ts';
import { type BandLabel, type CalloutSpec, type DimensionSpec, type Shape, type View } from '../../drafting/model.ts';
import { runningDepth } from '../../drafting/running.ts';
import { footHeight } from '../../drafting/view.ts';
import { type Block } from '../flow.ts';
import { type Page } from '../input.ts';
import { scalesOf, type Scale } from '../scales.ts';

/** In inches of steel. */
export interface SideView {
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
  /** Measured from `left` and from 0. */
  readonly widths: readonly number[];
  readonly heights: readonly number[];
}

/** Of figures that print alike one is enough. */
function ascending(values: readonly number[]): readonly number[] {
  const sorted = values.filter((value) => value > SAME_LENGTH).toSorted((a, b) => a - b);
  return sorted.filter((value, i) => i === 0 || value - sorted[i - 1]! > 1 / 32);
}

/** Paper that stands beside the steel: heights on the left, what sticks out on the right. */
export function besideSteel(page: Page, heights: readonly number[]): number {
  const { kit } = page;
  return runningDepth(kit, 3 * kit.h, Math.max(0, ...heights.map((value) => measureText(kit, printSize(kit, value))))) + 0.05;
}

/** Paper right of the steel, for words there. */
export const RIGHT = 12;

/** The largest scale at which the view takes no more of the page than these shares. */
export function sideScale(page: Page, view: Pick<SideView, 'left' | 'right' | 'low' | 'high' | 'heights'>, tall: number): Scale {
  const list = scalesOf(page.block.units);
  const room = page.room.width - besideSteel(page, view.heights) - RIGHT * page.kit.h;
  return list.find(({ scale }) => scale <= 1 / 6 && (view.right - view.left) * scale <= room && (view.high - view.low) * scale <= page.room.height * tall)
    ?? list[list.length - 1]!;
}

export function sideBlock(page: Page, view: SideView, scale: Scale): Block {
  const { kit } = page;
  const s = scale.scale;
  const [heights, widths] = [ascending(view.heights), ascending(view.widths)];
  const longest = Math.max(0, ...widths.map((value) => measureText(kit, printSize(kit, value))));
  const side = besideSteel(page, heights);
  const marks = view.labels.reduce((sum, { text }) => sum + bandWidth(kit, text), 0);
  const row = kit.up + kit.down + 2 * kit.clear + 0.006;
  const width = Math.min(page.room.width, Math.max(side + (view.right - view.left) * s + RIGHT * kit.h, marks + 2 * kit.h, 40 * kit.h, side + (widths.length + 2) * row));
  const foot = footHeight(kit, { title: view.title, scaleText: scale.text }, page.block, width);
  const deep = Math.max(-view.low * s + kit.h, widths.length === 0 ? 2 * kit.h : runningDepth(kit, 3 * kit.h, longest) + 0.02);
  const above = view.labels.length > 0 ? bandHeight(kit) : 5 * kit.h;
  const below = Math.max(deep, (heights.length + 1) * row - view.high * s - kit.up);
  const height = foot + below + view.high * s + above;
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
          ...(widths.length === 0 ? [] : [{ along: 'x' as const, datum: viewPoint(view.left, 0), at: widths.map((at) => viewPoint(view.left + at, 0)), line: 3 * kit.h }]),
          ...(heights.length === 0 ? [] : [{
            along: 'y' as const, datum: viewPoint(view.left, 0), at: heights.map((at) => viewPoint(view.left, at)), line: 3 * kit.h, limits: [below, view.high * s + kit.up] as const,
          }]),
        ],
        bands: view.labels.length === 0 ? [] : [{ top: inches(view.high), labels: view.labels }],
        callouts: view.callouts,
      };
      return { views: [placed] };
    },
  };
}
