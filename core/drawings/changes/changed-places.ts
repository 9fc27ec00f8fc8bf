/** Where two states of a view differ: what is new in it, and where something stood that is gone, as few boxes. */
import { type Vec } from '../../base/points.ts';
import { type View } from '../../drafting/model.ts';
import { boundsOf, type Bounds } from '../bounds.ts';
import { itemsOf, SAME_PRINT, type Item } from './items.ts';

/** Places nearer than this on the paper are one, inches. */
const NEAR = 0.6;
/** So many clouds on one view would hide it: then one is drawn round all. */
const MOST = 4;

/** In inches of steel; empty where nothing differs. */
export function changedPlaces(view: View, before: View): Bounds[] {
  const [now, then] = [itemsOf(view), itemsOf(before)];
  const changed = [...without(now, then), ...without(then, now)].map(({ points }) => points).filter((points) => points.length > 0);
  if (changed.length === 0) return [];
  const shown = boundsOf(now.flatMap(({ points }) => points));
  const boxes = changed.map((points) => boundsOf(points.map((point) => clamped(point, shown))));
  const places = joined(boxes, NEAR / view.scale);
  return places.length > MOST ? [union(places)] : places;
}

/** What is in the first list and not, as often, in the second. */
function without(items: readonly Item[], others: readonly Item[]): Item[] {
  const left = new Map<string, Item[]>();
  for (const item of others) {
    const list = left.get(item.words);
    if (list === undefined) left.set(item.words, [item]);
    else list.push(item);
  }
  return items.filter((item) => {
    const list = left.get(item.words) ?? [];
    const found = list.findIndex(({ figures }) => figures.every((figure, i) => Math.abs(figure - item.figures[i]!) < SAME_PRINT));
    if (found >= 0) list.splice(found, 1);
    return found < 0;
  });
}

const clamped = ({ x, y }: Vec, { left, right, low, high }: Bounds): Vec => ({ x: Math.min(right, Math.max(left, x)), y: Math.min(high, Math.max(low, y)) });

const union = (boxes: readonly Bounds[]): Bounds => boundsOf(boxes.flatMap(({ left, right, low, high }) => [{ x: left, y: low }, { x: right, y: high }]));

const near = (a: Bounds, b: Bounds, by: number): boolean => a.left - by <= b.right && b.left - by <= a.right && a.low - by <= b.high && b.low - by <= a.high;

/** Boxes that lie near one another, as one, until none do. */
function joined(boxes: readonly Bounds[], by: number): Bounds[] {
  const places: Bounds[] = [];
  for (const box of boxes) {
    let whole = box;
    for (let i = places.findIndex((place) => near(place, whole, by)); i >= 0; i = places.findIndex((place) => near(place, whole, by))) {
      whole = union([whole, ...places.splice(i, 1)]);
    }
    places.push(whole);
  }
  return places;
}
