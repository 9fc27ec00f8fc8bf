/** A detail: a view that takes the largest scale its box allows. */
import { sheetPoint } from '../base/points.ts';
import { type Rect } from '../drafting/boxes.ts';
import { type CalloutSpec, type DimensionSpec, type Shape, type View, type WeldSpec } from '../drafting/model.ts';
import { footHeight } from '../drafting/view.ts';
import { type Bounds } from './bounds.ts';
import { type Page } from './input.ts';
import { scaleToFit } from './scales.ts';

/** What a detail shows, before it has a place on the paper. */
export interface Detail {
  readonly id: string;
  readonly title: string;
  readonly bounds: Bounds;
  readonly shapes: readonly Shape[];
  readonly dimensions: (h: number) => readonly DimensionSpec[];
  readonly callouts: readonly CalloutSpec[];
  readonly welds?: readonly WeldSpec[];
}

/** A detail in its box at the largest scale that leaves `margins` letter heights of paper round it. */
export function detailView(page: Page, detail: Detail, box: Rect, margins: number): View {
  const { kit, block } = page;
  const { bounds } = detail;
  const margin = Math.min(margins * kit.h, box.height / 3.2, box.width / 3.2);
  const scale = scaleToFit(block.units, bounds.right - bounds.left, bounds.high - bounds.low, {
    width: box.width - 2.6 * margin, height: box.height - 2 * margin - 2 * kit.pitch,
  });
  const foot = footHeight(kit, { title: detail.title, scaleText: scale.text }, block, box.width);
  return {
    id: detail.id,
    title: detail.title,
    scale: scale.scale,
    scaleText: scale.text,
    at: sheetPoint(
      box.x + box.width / 2 - ((bounds.left + bounds.right) / 2) * scale.scale,
      box.y + foot + (box.height - foot) / 2 - ((bounds.low + bounds.high) / 2) * scale.scale,
    ),
    box,
    shapes: detail.shapes,
    dimensions: detail.dimensions(kit.h),
    runnings: [],
    bands: [],
    callouts: detail.callouts,
    ...(detail.welds === undefined ? {} : { welds: detail.welds }),
  };
}
