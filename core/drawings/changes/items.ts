/** What a view shows, item by item: what it says, and the points that it stands at. Two views that show the same have the same items. */
import { curvePoint } from '../../base/curve.ts';
import { type Vec } from '../../base/points.ts';
import { type DimensionSpec, type Shape, type View } from '../../drafting/model.ts';

export interface Item {
  /** What it is and says, a mark in the place of each figure. */
  readonly words: string;
  readonly figures: readonly number[];
  /** Inches of steel in the view. */
  readonly points: readonly Vec[];
}

/** Figures that differ by less than this, inches or radians, print the same. */
export const SAME_PRINT = 1e-3;

function words(what: string, value: unknown): Pick<Item, 'words' | 'figures'> {
  const figures: number[] = [];
  const text = JSON.stringify(value, (_, one: unknown) => {
    if (typeof one !== 'number') return one;
    figures.push(one);
    return '#';
  });
  return { words: `${what} ${text}`, figures };
}

export function itemsOf(view: View): Item[] {
  return [
    ...view.shapes.map(shapeItem),
    ...view.dimensions.map(dimensionItem),
    ...view.runnings.flatMap(({ along, datum, at }) => at.map((point): Item => ({ ...words('running', { along, datum, point }), points: [point] }))),
    ...view.bands.flatMap(({ top, labels }) => labels.map(({ text, x, targets }): Item => ({
      ...words('mark', { text, x, at: targets.map(({ y }) => y) }), points: [{ x, y: top }, ...targets.map(({ y }) => ({ x, y }))],
    }))),
    ...view.callouts.map(({ text, target }): Item => ({ ...words('word', { text, target }), points: [target] })),
    ...(view.welds ?? []).map(({ target, arrow, other, allRound, field, tail }): Item => ({ ...words('weld', { target, arrow, other, allRound, field, tail }), points: [target] })),
  ];
}

function shapeItem(shape: Shape): Item {
  if (shape.kind === 'circle') {
    const { center: { x, y }, radius } = shape;
    return { ...words('circle', { x, y, radius, pen: shape.pen }), points: [{ x: x - radius, y: y - radius }, { x: x + radius, y: y + radius }] };
  }
  return { ...words('curve', { curve: shape.curve, pen: shape.pen }), points: [0, 0.25, 0.5, 0.75, 1].map((share) => curvePoint(shape.curve, share)) };
}

function dimensionItem(spec: DimensionSpec): Item {
  const prefix = spec.prefix ?? '';
  switch (spec.measure) {
    case 'linear':
      return { ...words('size', { prefix, along: spec.along, from: spec.from, to: spec.to }), points: [spec.from, spec.to] };
    case 'aligned':
      return { ...words('size', { prefix, from: spec.from, to: spec.to }), points: [spec.from, spec.to] };
    case 'radius':
    case 'diameter':
      return { ...words(spec.measure, { prefix, center: spec.center, radius: spec.radius }), points: spec.angles.slice(0, 1).map((angle) => ({ x: spec.center.x + spec.radius * Math.cos(angle), y: spec.center.y + spec.radius * Math.sin(angle) })) };
    case 'angle':
      return { ...words('angle', { prefix, center: spec.center, from: spec.from, to: spec.to }), points: [spec.center] };
    case 'arc':
      return {
        ...words('arc', { prefix, center: spec.center, radius: spec.radius, from: spec.from, to: spec.to }),
        points: [spec.from, spec.to].map((angle) => ({ x: spec.center.x + spec.radius * Math.cos(angle), y: spec.center.y + spec.radius * Math.sin(angle) })),
      };
  }
}
