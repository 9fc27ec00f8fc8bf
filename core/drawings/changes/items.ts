/** What a view shows, item by item: what it says, and the points that it stands at. Two views that show the same have the same items. */
import { curvePoint } from '../../base/curve.ts';
import { type Vec } from '../../base/points.ts';
import { type DimensionSpec, type Shape, type View } from '../../drafting/model.ts';

export interface Item {
  readonly words: string;
  /** Inches of steel in the view. */
  readonly points: readonly Vec[];
}

/** Figures to a thousandth: what a print can't show is no change. */
const words = (what: string, value: unknown): string =>
  `${what} ${JSON.stringify(value, (_, one: unknown) => (typeof one === 'number' ? Math.round(one * 1000) / 1000 + 0 : one))}`;

export function itemsOf(view: View): Item[] {
  return [
    ...view.shapes.map(shapeItem),
    ...view.dimensions.map(dimensionItem),
    ...view.runnings.flatMap(({ along, datum, at }) => at.map((point): Item => ({ words: words('running', { along, datum, point }), points: [point] }))),
    ...view.bands.flatMap(({ top, labels }) => labels.map(({ text, x, targets }): Item => ({
      words: words('mark', { text, x, at: targets.map(({ y }) => y) }), points: [{ x, y: top }, ...targets.map(({ y }) => ({ x, y }))],
    }))),
    ...view.callouts.map(({ text, target }): Item => ({ words: words('word', { text, target }), points: [target] })),
    ...(view.welds ?? []).map(({ target, arrow, other, allRound, field, tail }): Item => ({ words: words('weld', { target, arrow, other, allRound, field, tail }), points: [target] })),
  ];
}

function shapeItem(shape: Shape): Item {
  if (shape.kind === 'circle') {
    const { center: { x, y }, radius } = shape;
    return { words: words('circle', { x, y, radius, pen: shape.pen }), points: [{ x: x - radius, y: y - radius }, { x: x + radius, y: y + radius }] };
  }
  return { words: words('curve', { curve: shape.curve, pen: shape.pen }), points: [0, 0.25, 0.5, 0.75, 1].map((share) => curvePoint(shape.curve, share)) };
}

function dimensionItem(spec: DimensionSpec): Item {
  const prefix = spec.prefix ?? '';
  switch (spec.measure) {
    case 'linear':
      return { words: words('size', { prefix, along: spec.along, from: spec.from, to: spec.to }), points: [spec.from, spec.to] };
    case 'aligned':
      return { words: words('size', { prefix, from: spec.from, to: spec.to }), points: [spec.from, spec.to] };
    case 'radius':
    case 'diameter':
      return { words: words(spec.measure, { prefix, center: spec.center, radius: spec.radius }), points: spec.angles.slice(0, 1).map((angle) => ({ x: spec.center.x + spec.radius * Math.cos(angle), y: spec.center.y + spec.radius * Math.sin(angle) })) };
    case 'angle':
      return { words: words('angle', { prefix, center: spec.center, from: spec.from, to: spec.to }), points: [spec.center] };
    case 'arc':
      return {
        words: words('arc', { prefix, center: spec.center, radius: spec.radius, from: spec.from, to: spec.to }),
        points: [spec.from, spec.to].map((angle) => ({ x: spec.center.x + spec.radius * Math.cos(angle), y: spec.center.y + spec.radius * Math.sin(angle) })),
      };
  }
}
