/** From what a drawing asks to measure to the ways in which it may be drawn, best first. */
import { dot, scale, sub, length } from '../base/points.ts';
import { angleDimensions, arcDimensions, radiusDimensions } from './dimension-round.ts';
import { ledDimensions, straightDimensions } from './dimension-straight.ts';
import { printAngle } from '../units/index.ts';
import { radians } from '../base/quantity.ts';
import { type Kit, printSize } from './kit.ts';
import { type DimensionSpec, type View } from './model.ts';
import { type Dimension } from './primitives.ts';
import { toPaper } from './view.ts';
import { say } from '../text/index.ts';

export function* dimensionPlaces(kit: Kit, view: View, spec: DimensionSpec): Generator<Dimension> {
  const common = { view: view.id };
  const text = (figure: string): string => spec.chained ?? (spec.prefix === undefined ? figure : `${spec.prefix} ${figure}`);
  const size = (value: number): string => printSize(kit, value, spec.decimal === true);
  switch (spec.measure) {
    case 'linear':
    case 'aligned': {
      const from = toPaper(view, spec.from);
      const to = toPaper(view, spec.to);
      const way = sub(spec.to, spec.from);
      const axis = spec.measure === 'aligned' ? scale(way, 1 / length(way)) : spec.along === 'x' ? { x: 1, y: 0 } : { x: 0, y: 1 };
      const along = dot(way, axis) < 0 ? scale(axis, -1) : axis;
      const value = dot(way, along);
      const chained = spec.chained !== undefined;
      const inputs = spec.offsets.map((offset) => ({ ...common, measure: spec.measure, from, to, along, offset, value, text: text(size(value)), chained }));
      for (const input of inputs) yield* straightDimensions(kit, input);
      if (spec.required) for (const input of inputs.slice(0, 2)) yield* ledDimensions(kit, input);
      return;
    }
    case 'radius':
    case 'diameter': {
      const value = spec.measure === 'radius' ? spec.radius : 2 * spec.radius;
      const label = say(spec.measure === 'radius' ? 'drawings.size.radius' : 'drawings.size.diameter', { size: size(value) });
      for (const angle of spec.angles) {
        yield* radiusDimensions(kit, {
          ...common, measure: spec.measure, center: toPaper(view, spec.center), radius: spec.radius * view.scale, angle, value, text: text(label),
        });
      }
      return;
    }
    case 'angle': {
      const value = spec.to - spec.from;
      for (const offset of spec.offsets) {
        yield* angleDimensions(kit, { ...common, center: toPaper(view, spec.center), from: spec.from, to: spec.to, offset, value, text: text(printAngle(radians(value))) });
      }
      return;
    }
    case 'arc': {
      const value = spec.radius * (spec.to - spec.from);
      const label = say('drawings.size.arc', { size: size(value) });
      for (const offset of spec.offsets) {
        yield* arcDimensions(kit, {
          ...common, center: toPaper(view, spec.center), radius: spec.radius * view.scale, from: spec.from, to: spec.to, offset, value, text: text(label),
        });
      }
    }
  }
}
