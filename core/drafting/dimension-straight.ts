/** Linear and aligned dimensions: witness lines, dimension line, arrowheads, text above the line or beside it. */
import { radians } from '../base/quantity.ts';
import { type Vec, add, angleOf, dot, leftOf, length, scale, sub, unitAt } from '../base/points.ts';
import { textBox } from './boxes.ts';
import { REACHES, TURNS } from './callout.ts';
import { type Kit, PENS, makeText, measureText } from './kit.ts';
import { type Dimension, type Stroke } from './primitives.ts';
import { arrowhead, lineStroke, toSheet } from './strokes.ts';

export interface StraightInput {
  readonly view: string;
  readonly measure: 'linear' | 'aligned';
  readonly from: Vec;
  readonly to: Vec;
  /** Unit vector along which it is measured, from → to. */
  readonly along: Vec;
  /** Distance of the dimension line from `from`, to the left of `along`. */
  readonly offset: number;
  readonly value: number;
  readonly text: string;
  readonly chained: boolean;
}

/** Where the text may stand: over the middle, past the end, before the start, or out on a leader from the middle. */
type TextPlace = 'middle' | 'after' | 'before' | { readonly reach: number; readonly turn: number };

/** The ways in which this dimension may be drawn at this offset, best first. */
export function* straightDimensions(kit: Kit, input: StraightInput): Generator<Dimension> {
  const span = dot(sub(input.to, input.from), input.along);
  const fits = span > measureText(kit, input.text) + 2 * kit.clear;
  for (const place of fits ? (['middle', 'after', 'before'] as const) : (['after', 'before'] as const)) {
    yield drawn(kit, input, span, place);
  }
}

/** The same with its text out on a leader, for where there is no room beside the line. */
export function* ledDimensions(kit: Kit, input: StraightInput): Generator<Dimension> {
  const span = dot(sub(input.to, input.from), input.along);
  for (const reach of REACHES) for (const turn of TURNS) yield drawn(kit, input, span, { reach: reach * kit.h, turn: (turn * Math.PI) / 180 });
}

function drawn(kit: Kit, input: StraightInput, span: number, place: TextPlace): Dimension {
  const { along, offset } = input;
  const normal = leftOf(along);
  const a = add(input.from, scale(normal, offset));
  const b = add(a, scale(along, span));
  const strokes: Stroke[] = [...witness(kit, input.from, a), ...witness(kit, input.to, b)];
  const tight = span < 2.5 * kit.arrow;
  const textLength = measureText(kit, input.text) + 2 * kit.clear;
  const tail = tight ? 2 * kit.arrow : 0;
  const beyond = place !== 'after' && place !== 'before' ? 0 : Math.max(tail, kit.past) + textLength;
  const start = place === 'before' ? add(a, scale(along, -beyond)) : add(a, scale(along, -tail));
  const end = place === 'after' ? add(b, scale(along, beyond)) : add(b, scale(along, tail));
  strokes.push(lineStroke(PENS.size, start, end));
  strokes.push(arrowhead('SIZES', a, tight ? along : scale(along, -1), kit.arrow));
  strokes.push(arrowhead('SIZES', b, tight ? scale(along, -1) : along, kit.arrow));
  const label = typeof place === 'string' ? beside(kit, input.text, along, textPlace(a, b, start, end, along, place, textLength)) : led(kit, input.text, scale(add(a, b), 0.5), place);
  strokes.push(...label);
  const words = label.find((stroke) => stroke.kind === 'text')!;
  const box = textBox(kit.font, words);
  return {
    kind: 'dimension',
    measure: input.measure,
    view: input.view,
    from: toSheet(input.from),
    to: toSheet(input.to),
    center: null,
    line: toSheet(a),
    rotation: radians(angleOf(along)),
    value: input.value,
    text: input.text,
    textAt: toSheet({ x: box.cx, y: box.cy }),
    chained: input.chained,
    strokes,
  };
}

function textPlace(a: Vec, b: Vec, start: Vec, end: Vec, along: Vec, place: 'middle' | 'after' | 'before', text: number): Vec {
  if (place === 'middle') return scale(add(a, b), 0.5);
  return place === 'after' ? add(end, scale(along, -text / 2)) : add(start, scale(along, text / 2));
}

/** Text over its line, read from the foot or the right side. */
function beside(kit: Kit, text: string, along: Vec, middle: Vec): Stroke[] {
  const reading = readable(along);
  const at = add(middle, scale(leftOf(reading), kit.down + kit.clear));
  return [makeText(kit, 'SIZES', text, toSheet(at), 'middle', radians(angleOf(reading)))];
}

/** Text at the end of a leader with a level shelf. */
function led(kit: Kit, text: string, from: Vec, place: { readonly reach: number; readonly turn: number }): Stroke[] {
  const way = unitAt(place.turn);
  const elbow = add(from, scale(way, place.reach));
  const side = way.x >= 0 ? 1 : -1;
  const end = add(elbow, { x: side * 1.2 * kit.h, y: 0 });
  const at = { x: end.x + side * 1.6 * kit.clear, y: end.y - (kit.up - kit.down) / 2 };
  return [
    lineStroke(PENS.size, from, elbow),
    lineStroke(PENS.size, elbow, end),
    makeText(kit, 'SIZES', text, toSheet(at), side > 0 ? 'start' : 'end'),
  ];
}

/** An extension line from beside a witness point to a little past the dimension line. */
function witness(kit: Kit, from: Vec, to: Vec): Stroke[] {
  const way = sub(to, from);
  const reach = length(way);
  if (reach <= kit.gap) return [];
  const unit = scale(way, 1 / reach);
  return [lineStroke(PENS.size, add(from, scale(unit, kit.gap)), add(to, scale(unit, kit.past)))];
}

/** A direction along which a text is read from the foot or the right side of the drawing. */
export function readable(along: Vec): Vec {
  const flip = along.x < -1e-9 || (Math.abs(along.x) <= 1e-9 && along.y < 0);
  return flip ? scale(along, -1) : along;
}

