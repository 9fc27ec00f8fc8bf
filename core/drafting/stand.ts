/** Things put on the paper one after another, each kept clear of what stands there already. */
import { type Rect } from './boxes.ts';
import { calloutPlaces } from './callout.ts';
import { dimensionPlaces } from './dimension.ts';
import { type Kit } from './kit.ts';
import { type CalloutSpec, type DimensionSpec, type Shape, type View, type WeldSpec } from './model.ts';
import { makeOccupancy } from './occupancy.ts';
import { bestOf, costOf, settle } from './place.ts';
import { type Callout, type Dimension, type Primitive, type Stroke } from './primitives.ts';
import { segmentsOf } from './strokes.ts';
import { shapeStroke, toPaper } from './view.ts';
import { weldPlaces } from './weld-places.ts';

export interface Stand {
  /** All that stands, in the order in which it was put there. */
  readonly primitives: readonly Primitive[];
  /** Puts strokes where they are: nothing may touch their texts, no text their lines. */
  strokes(strokes: readonly Stroke[]): void;
  item(item: Dimension | Callout): void;
  /** Puts shapes as steel: texts keep off them where they can. */
  steel(view: View, shapes: readonly Shape[]): void;
  /** Draws a dimension where it has room; false where it has none. */
  dimension(view: View, spec: DimensionSpec): boolean;
  callout(view: View, spec: CalloutSpec): boolean;
  weld(view: View, spec: WeldSpec): boolean;
  /** The first of some groups of strokes that has room, not yet put there. */
  first<T extends { readonly strokes: readonly Stroke[] }>(candidates: Iterable<T>, room: Rect): T | null;
  /** The first and cheapest of some candidates, put there; null where none has room. */
  best<T extends Dimension | Callout>(candidates: Iterable<T>, room: Rect): T | null;
}

export function makeStand(kit: Kit): Stand {
  const occupancy = makeOccupancy();
  const primitives: Primitive[] = [];
  const strokes: Stand['strokes'] = (list) => {
    settle(kit, occupancy, list);
    for (const stroke of list) primitives.push(stroke);
  };
  const item: Stand['item'] = (one) => {
    settle(kit, occupancy, one.strokes);
    primitives.push(one);
  };
  const best = <T extends Dimension | Callout>(candidates: Iterable<T>, room: Rect): T | null => bestOf(kit, occupancy, candidates, room);
  const standBest = (candidates: Iterable<Dimension | Callout>, room: Rect): boolean => {
    const found = best(candidates, room);
    if (found !== null) item(found);
    return found !== null;
  };
  return {
    primitives,
    strokes,
    item,
    best,
    first: (candidates, room) => {
      for (const one of candidates) if (costOf(kit, occupancy, one.strokes, room) !== null) return one;
      return null;
    },
    steel: (view, shapes) => {
      for (const shape of shapes) {
        const stroke = shapeStroke(view, shape);
        const ends = segmentsOf([stroke]);
        // An arrow or the like among the shapes is no steel: it may lie under no text.
        const put = shape.pen.layer === 'NOTES' ? occupancy.addLine : occupancy.addSteel;
        for (let i = 0; i < ends.length; i += 4) put(ends[i]!, ends[i + 1]!, ends[i + 2]!, ends[i + 3]!);
        primitives.push(stroke);
      }
    },
    dimension: (view, spec) => standBest(dimensionPlaces(kit, view, spec), view.box),
    callout: (view, spec) => {
      const others = spec.others?.map((point) => toPaper(view, point)) ?? [];
      return standBest(calloutPlaces(kit, { ...spec, view: view.id, target: toPaper(view, spec.target), others }), view.box);
    },
    weld: (view, spec) => {
      const found = bestOf(kit, occupancy, weldPlaces(kit, view.id, spec, toPaper(view, spec.target)), view.box);
      if (found !== null) item(found.callout);
      return found !== null;
    },
  };
}
