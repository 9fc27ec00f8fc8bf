/** How a skin is stitched to its rails, seen from the outside: rails, the skin behind them, each stitch as it is laid. */
import { PENS } from '../../drafting/kit.ts';
import { type Shape } from '../../drafting/model.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence } from '../../layout/index.ts';
import { skinWeld } from '../../schedules/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { rectangle, straight } from '../gate-outline.ts';
import { size, weldAt, word } from './say-size.ts';

/** Null for a fence without a skin. x along the fence, y up from the lower of two rails. */
export function stitchDetail(brief: Brief, fence: Fence): Detail | null {
  const { rows, railHeight: tall } = fence.section;
  const { sheet, solidFrom, solidTo } = fence.brief;
  if (sheet === null || solidTo <= solidFrom) return null;
  const behind = rows.filter((row) => row + tall / 2 >= solidFrom && row - tall / 2 <= solidTo);
  const [low, high] = [behind[0], behind[1]];
  if (low === undefined) return null;
  const shown = high === undefined ? [0] : [0, high - low];
  const weld = skinWeld(brief, fence);
  const { length, pitch } = weld.symbol.arrow!;
  const long = length === null || pitch === null ? 3 * tall : pitch + 2 * length;
  const stitches = length === null || pitch === null ? [[0, long]] as const : [[0, length], [pitch, pitch + length]] as const;
  const left = -tall;
  const right = long + tall;
  const top = shown[shown.length - 1]! + tall / 2;
  const shapes: Shape[] = [
    ...shown.flatMap((y) => [straight(PENS.outline, left, y - tall / 2, right, y - tall / 2), straight(PENS.outline, left, y + tall / 2, right, y + tall / 2)]),
    // A stitch lies in the groove under the rail.
    ...shown.flatMap((y) => stitches.flatMap(([a, b]) => rectangle(PENS.thin, a, b, y - tall / 2 - tall / 8, y - tall / 2))),
  ];
  return {
    id: `stitches ${fence.run} ${fence.side}`,
    title: say('drawings.detail.stitches', { sheet: sheet.name, rail: fence.brief.rail.name }),
    bounds: boundsOf([{ x: left, y: -tall }, { x: right, y: top }]),
    shapes,
    dimensions: (h) => (length === null || pitch === null ? [] : [
      size(h, 'x', [0, -tall / 2 - tall / 8], [length, -tall / 2 - tall / 8], -1),
      size(h, 'x', [0, top], [pitch, top], 1),
    ]),
    callouts: [word('drawings.detail.rail', [right - tall / 2, 0], [1, -0.3]), word('drawings.detail.skin', [long * 0.75, top / 2], [1, 0.5], { sheet: sheet.name })],
    welds: [weldAt(weld, [stitches.at(-1)![0], shown[shown.length - 1]! - tall / 2], [0.4, -1])],
  };
}
