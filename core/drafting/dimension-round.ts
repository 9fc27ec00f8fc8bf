/** Radius, diameter, angle and arc-length dimensions. */
import { inches, radians } from '../base/quantity.ts';
import { type Vec, add, angleOf, leftOf, scale, unitAt } from '../base/points.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Dimension, type Stroke } from './primitives.ts';
import { readable } from './dimension-straight.ts';
import { arrowhead, lineStroke, toSheet } from './strokes.ts';

interface Common {
  readonly view: string;
  readonly center: Vec;
  readonly value: number;
  readonly text: string;
}

/** A radius (or diameter) leader through the arc at `angle`: the figure level at its end, on the side of the center first, then outside. */
export function* radiusDimensions(
  kit: Kit,
  input: Common & { readonly measure: 'radius' | 'diameter'; readonly radius: number; readonly angle: number },
): Generator<Dimension> {
  const out = unitAt(input.angle);
  const tip = add(input.center, scale(out, input.radius));
  const from = input.measure === 'radius' ? input.center : add(input.center, scale(out, -input.radius));
  for (const reach of [3.5, 6, 9, 13, 18]) {
    for (const inside of [true, false]) {
      if (inside && reach * kit.h > 2 * input.radius) continue;
      const elbow = add(tip, scale(out, (inside ? -1 : 1) * reach * kit.h));
      const side = (inside ? -out.x : out.x) >= 0 ? 1 : -1;
      const end = add(elbow, { x: side * 1.2 * kit.h, y: 0 });
      const at = { x: end.x + side * 1.6 * kit.clear, y: end.y - (kit.up - kit.down) / 2 };
      const strokes: Stroke[] = [
        lineStroke(PENS.size, tip, elbow),
        lineStroke(PENS.size, elbow, end),
        arrowhead('SIZES', tip, inside ? out : scale(out, -1), kit.arrow),
        makeText(kit, 'SIZES', input.text, toSheet(at), side > 0 ? 'start' : 'end'),
      ];
      const middle = { x: at.x + (side * measureText(kit, input.text)) / 2, y: at.y + kit.h / 2 };
      yield {
        kind: 'dimension', measure: input.measure, view: input.view,
        from: toSheet(from), to: toSheet(tip), center: toSheet(input.center), line: toSheet(end), rotation: radians(input.angle),
        value: input.value, text: input.text, textAt: toSheet(middle), chained: false, strokes,
      };
    }
  }
}

/** An angle between two directions, counter-clockwise from the first, its arc at `offset` from the corner. */
export function* angleDimensions(
  kit: Kit,
  input: Common & { readonly from: number; readonly to: number; readonly offset: number },
): Generator<Dimension> {
  const sweep = input.to - input.from;
  const at = (angle: number, radius: number): Vec => add(input.center, scale(unitAt(angle), radius));
  const tight = input.offset * sweep < 2.5 * kit.arrow;
  const tail = tight ? (2 * kit.arrow) / input.offset : 0;
  const side = (angle: number): Stroke =>
    lineStroke(PENS.size, at(angle, Math.min(kit.gap, input.offset / 2)), at(angle, input.offset + kit.past));
  const lines: Stroke[] = [
    side(input.from),
    side(input.to),
    {
      kind: 'arc', pen: PENS.size, center: toSheet(input.center), radius: inches(input.offset),
      start: radians(input.from - tail), sweep: radians(sweep + 2 * tail),
    },
    arrowhead('SIZES', at(input.from, input.offset), scale(leftOf(unitAt(input.from)), tight ? 1 : -1), kit.arrow),
    arrowhead('SIZES', at(input.to, input.offset), scale(leftOf(unitAt(input.to)), tight ? -1 : 1), kit.arrow),
  ];
  const half = { x: measureText(kit, input.text) / 2 + kit.clear, y: (kit.up + kit.down) / 2 + kit.clear };
  for (const bearing of [0.5, 0.3, 0.7, -0.3, 1.3]) {
    const way = unitAt(input.from + sweep * bearing);
    const near = Math.abs(way.x) * half.x + Math.abs(way.y) * half.y + kit.clear;
    for (const extra of [0, 0.25, 0.6]) {
      const middle = add(input.center, scale(way, input.offset + near + extra));
      const base = { x: middle.x, y: middle.y - (kit.up - kit.down) / 2 };
      yield {
        kind: 'dimension', measure: 'angle', view: input.view,
        from: toSheet(at(input.from, input.offset)), to: toSheet(at(input.to, input.offset)), center: toSheet(input.center),
        line: toSheet(at(input.from + sweep / 2, input.offset)), rotation: radians(0),
        value: input.value, text: input.text, textAt: toSheet(middle), chained: false,
        strokes: [...lines, makeText(kit, 'SIZES', input.text, toSheet(base), 'middle')],
      };
    }
  }
}

/** A length along an arc: a second arc `offset` outside it (inside where negative), witness lines along the radii. */
export function* arcDimensions(
  kit: Kit,
  input: Common & { readonly radius: number; readonly from: number; readonly to: number; readonly offset: number },
): Generator<Dimension> {
  const radius = input.radius + input.offset;
  if (radius <= 2 * kit.arrow) return;
  const sweep = input.to - input.from;
  const at = (angle: number, r: number): Vec => add(input.center, scale(unitAt(angle), r));
  const way = Math.sign(input.offset) || 1;
  const tight = radius * sweep < 2.5 * kit.arrow;
  const tail = tight ? (2 * kit.arrow) / radius : 0;
  const lines: Stroke[] = [input.from, input.to].map((angle) =>
    lineStroke(PENS.size, at(angle, input.radius + way * kit.gap), at(angle, radius + way * kit.past)),
  );
  lines.push(
    { kind: 'arc', pen: PENS.size, center: toSheet(input.center), radius: inches(radius), start: radians(input.from - tail), sweep: radians(sweep + 2 * tail) },
    arrowhead('SIZES', at(input.from, radius), scale(leftOf(unitAt(input.from)), tight ? 1 : -1), kit.arrow),
    arrowhead('SIZES', at(input.to, radius), scale(leftOf(unitAt(input.to)), tight ? -1 : 1), kit.arrow),
  );
  const width = measureText(kit, input.text);
  for (const bearing of [0.5, 0.35, 0.65, 0.2, 0.8]) {
    const angle = input.from + sweep * bearing;
    const reading = readable(leftOf(unitAt(angle)));
    const up = leftOf(reading);
    const outward = up.x * Math.cos(angle) + up.y * Math.sin(angle) > 0;
    // On the hollow side the arc rises toward the text's ends.
    const half = width / 2 + kit.clear;
    const sag = outward || half >= radius ? 0 : radius - Math.sqrt(radius * radius - half * half);
    const base = add(at(angle, radius), scale(up, kit.down + kit.clear + sag));
    yield {
      kind: 'dimension', measure: 'arc', view: input.view,
      from: toSheet(at(input.from, input.radius)), to: toSheet(at(input.to, input.radius)), center: toSheet(input.center),
      line: toSheet(at(angle, radius)), rotation: radians(0), value: input.value, text: input.text,
      textAt: toSheet(add(base, scale(up, kit.h / 2))), chained: false,
      strokes: [...lines, makeText(kit, 'SIZES', input.text, toSheet(base), 'middle', radians(angleOf(reading)))],
    };
  }
}

