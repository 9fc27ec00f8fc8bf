/**
 * A weld symbol after AWS A2.4 that looks for its own place: arrow to the joint, reference line, below it what the arrow's side gets and
 * above it the other side, size to the left and length-pitch to the right of each symbol whichever way the line runs; a circle where
 * line and arrow meet for all round, a flag there for field, words in a tail.
 */
import { inches } from '../base/quantity.ts';
import { type Vec, add, angleOf, scale, sub, unitAt } from '../base/points.ts';
import { type TurnedBox, rectBox } from './boxes.ts';
import { REACHES, TURNS } from './callout.ts';
import { type Kit, PENS, type TextStroke, makeText, measureText } from './kit.ts';
import { type WeldMark, type WeldSpec, type WeldSymbol } from './model.ts';
import { type Callout, type Stroke } from './primitives.ts';
import { arrowhead, lineStroke, toSheet } from './strokes.ts';
import { glyphStrokes, glyphWidth } from './weld-glyphs.ts';
import { weldLength, weldSize } from './weld-words.ts';

/** Sizes of the symbol's parts, in letter heights. */
const CIRCLE = 0.45;
const LEAD = 0.9;
const STAFF = 2.4;
const FLAG = 1.5;
const FORK = 0.7;
/** An arrow that lies flatter than this (its sine) would be read as the reference line. */
const FLAT = 0.3;

/** A place for a symbol: what would be drawn, and what of it would rather lie on no steel: line and signs, and the arrow short of the joint. */
export interface WeldPlace {
  readonly callout: Callout;
  readonly strokes: Callout['strokes'];
  readonly body: readonly TurnedBox[];
}

export function* weldPlaces(kit: Kit, view: string, spec: WeldSpec, target: Vec): Generator<WeldPlace> {
  const heading = angleOf(spec.toward);
  for (const reach of REACHES) {
    for (const turn of TURNS) {
      const way = unitAt(heading + (turn * Math.PI) / 180);
      if (Math.abs(way.y) < FLAT) continue;
      const end = add(target, scale(way, reach * kit.h));
      const first: 1 | -1 = way.x >= 0 ? 1 : -1;
      for (const side of Math.abs(way.x) < FLAT ? ([first, -first] as const) : [first]) {
        const symbol = symbolAt(kit, spec, end, side as 1 | -1, target);
        yield { callout: { ...symbol.callout, view }, strokes: symbol.callout.strokes, body: symbol.body };
      }
    }
  }
}

/** The symbol whose reference line runs from `end`, where the arrow meets it, to the right (1) or the left (-1). */
function symbolAt(kit: Kit, symbol: WeldSymbol, end: Vec, side: 1 | -1, target: Vec): { readonly callout: Omit<Callout, 'view'>; readonly body: readonly TurnedBox[] } {
  const pen = PENS.note;
  const back = sub(target, end);
  const along = scale(back, 1 / Math.hypot(back.x, back.y));
  const marks = [{ mark: symbol.arrow, up: -1 as const }, { mark: symbol.other, up: 1 as const }];
  const lead = (symbol.field ? FLAG + 0.3 : LEAD) * kit.h;
  const content = Math.max(0, ...marks.map(({ mark }) => (mark === null ? 0 : widthOf(kit, symbol, mark))));
  const far = { x: end.x + side * (lead + content + LEAD * kit.h), y: end.y };
  const left = side > 0 ? end.x + lead : far.x + LEAD * kit.h;
  const texts: TextStroke[] = [];
  const strokes: Stroke[] = [
    lineStroke(pen, target, end),
    arrowhead('NOTES', target, along, kit.arrow),
    lineStroke(pen, end, far),
  ];
  for (const { mark, up } of marks) {
    if (mark === null) continue;
    const at = { x: left + sizeWidth(kit, symbol), y: end.y };
    strokes.push(...glyphStrokes(kit, mark.kind, at, up));
    // Clear of the line by the font's own reach.
    const baseline = up > 0 ? end.y + kit.down + kit.clear : end.y - kit.up - kit.clear;
    const size = weldSize(kit, mark);
    if (size !== null) texts.push(makeText(kit, 'NOTES', size, toSheet({ x: at.x - kit.clear, y: baseline }), 'end'));
    const length = weldLength(kit, mark);
    if (length !== null) texts.push(makeText(kit, 'NOTES', length, toSheet({ x: at.x + glyphWidth(kit, mark.kind) + kit.clear, y: baseline }), 'start'));
  }
  if (symbol.allRound) strokes.push({ kind: 'circle', pen, center: toSheet(end), radius: inches(CIRCLE * kit.h) });
  if (symbol.field) strokes.push(...flagStrokes(kit, end, side));
  if (symbol.tail !== null) {
    for (const up of [1, -1]) strokes.push(lineStroke(pen, far, { x: far.x + side * FORK * kit.h, y: far.y + up * FORK * kit.h }));
    const at = { x: far.x + side * (FORK * kit.h + kit.clear), y: far.y - (kit.up - kit.down) / 2 };
    texts.push(makeText(kit, 'NOTES', symbol.tail, toSheet(at), side > 0 ? 'start' : 'end'));
  }
  const [first] = texts;
  if (first === undefined) throw new Error('a weld symbol without a size, a length or words in its tail says nothing');
  const up = symbol.other !== null || symbol.field ? STAFF * kit.h : CIRCLE * kit.h;
  const [x, width] = [Math.min(end.x, far.x), Math.abs(far.x - end.x)];
  return {
    callout: { kind: 'callout', text: first.text, pieces: [], targets: [toSheet(target)], strokes: [...strokes, ...texts], arrow: [toSheet(target), toSheet(end)] },
    body: [rectBox({ x, y: end.y - STAFF * kit.h, width, height: up + STAFF * kit.h }), arrowBox(kit, target, end)],
  };
}

/** A thread along the arrow, from a letter's height short of the joint. */
function arrowBox(kit: Kit, target: Vec, end: Vec): TurnedBox {
  const way = sub(end, target);
  const long = Math.hypot(way.x, way.y);
  const middle = add(target, scale(way, (long + kit.h) / 2 / long));
  return { cx: middle.x, cy: middle.y, hx: Math.max(0, (long - kit.h) / 2), hy: 0.1 * kit.clear, cos: way.x / long, sin: way.y / long };
}

/** A pennant on a staff across the reference line's end, pointing to the tail (from memory of A2.4). */
function flagStrokes(kit: Kit, end: Vec, side: 1 | -1): Stroke[] {
  const top = STAFF * kit.h;
  const half = (FLAG * kit.h) / 6;
  const tip = { x: end.x + side * FLAG * kit.h, y: end.y + top - half };
  return [lineStroke(PENS.note, end, { x: end.x, y: end.y + top }), arrowhead('NOTES', tip, { x: side, y: 0 }, FLAG * kit.h)];
}

/** The sizes on both sides end at one place, so that the symbols stand one over the other. */
function sizeWidth(kit: Kit, symbol: WeldSymbol): number {
  const sizes = [symbol.arrow, symbol.other].flatMap((mark) => (mark === null ? [] : [weldSize(kit, mark)]));
  return Math.max(0, ...sizes.map((size) => (size === null ? 0 : measureText(kit, size) + 2 * kit.clear)));
}

function widthOf(kit: Kit, symbol: WeldSymbol, mark: WeldMark): number {
  const length = weldLength(kit, mark);
  return sizeWidth(kit, symbol) + glyphWidth(kit, mark.kind) + (length === null ? 0 : measureText(kit, length) + 2 * kit.clear);
}
