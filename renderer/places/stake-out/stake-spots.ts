import { type SheetPoint, sheetPoint } from '../../../core/base/points.ts';
import { inches } from '../../../core/base/quantity.ts';
import { type Sheet, type Stroke } from '../../../core/drafting/primitives.ts';
import { type StakeRow } from '../../../core/schedules/index.ts';
import { type Spot, textSpot } from '../../parts/spots.ts';

/** Least half of a spot's side, paper inches: a hole is a few hundredths across on the drawing of the whole site. */
const LEAST = 0.09;
/** Two places on the paper are one when no printer could tell them apart. */
const SAME = 1e-6;

interface Placed {
  readonly row: StakeRow;
  readonly at: SheetPoint;
  readonly radius: number;
}

/** The points that a drawing shows, where it shows them: by name on a leader, or by the circle of their hole alone. */
function placedPoints(sheet: Sheet, rows: readonly StakeRow[]): readonly Placed[] {
  const circles = sheet.primitives.filter((item) => item.kind === 'circle');
  const named = new Set(sheet.primitives.flatMap((item) => (item.kind === 'callout' ? [item.text] : [])));
  return sheet.views.flatMap((view) => rows.flatMap((row): Placed[] => {
    const at = sheetPoint(view.at.x + row.x * view.scale, view.at.y + row.y * view.scale);
    const hole = circles.find(({ center }) => Math.hypot(center.x - at.x, center.y - at.y) <= SAME);
    return hole !== undefined || named.has(row.point) ? [{ row, at, radius: hole?.radius ?? 0 }] : [];
  }));
}

/** What may be chosen on a drawing of the stakeout: each point, and its name where it is called out. */
export function stakeSpots(sheet: Sheet, rows: readonly StakeRow[]): readonly Spot[] {
  const places = placedPoints(sheet, rows);
  const names = new Set(places.map(({ row }) => row.point));
  const points = places.map(({ row, at, radius }): Spot => {
    const half = Math.max(LEAST, radius);
    const y = sheet.paper.height - at.y;
    return {
      key: `point ${row.point}`, id: row.point, label: row.point,
      box: { x: at.x - half, y: y - half, width: 2 * half, height: 2 * half },
      turn: { degrees: 0, x: at.x, y },
    };
  });
  const called = sheet.primitives.flatMap((item, index): Spot[] => {
    if (item.kind !== 'callout' || !names.has(item.text)) return [];
    const text = item.strokes.find((stroke) => stroke.kind === 'text');
    return text === undefined ? [] : [textSpot(text, sheet.paper.height, `name ${String(index)}`, item.text, item.text)];
  });
  return [...points, ...called];
}

/** A ring round the point that is looked at. */
export function ringOf(sheet: Sheet, rows: readonly StakeRow[], point: string | null): readonly Stroke[] {
  return placedPoints(sheet, rows.filter((row) => row.point === point)).map(({ at, radius }) => ({
    kind: 'circle', pen: { layer: 'MARKS', weight: 'thick', dash: 'solid' }, center: at, radius: inches(Math.max(1.5 * LEAST, 1.5 * radius)),
  }));
}
