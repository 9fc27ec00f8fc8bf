/** A picture as few things to draw: one path for each pen, and the texts. Pixels of CSS, y down, the plan's origin at 0, 0. */
import { type Vec } from '../../../../core/base/points.ts';
import { curvePoint } from '../../../../core/base/curve.ts';
import { type Pen, type Primitive, type Stroke, strokesOf } from '../../../../core/drafting/primitives.ts';
import { PX } from './view.ts';

export interface InkText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  /** Height of a capital. */
  readonly height: number;
  readonly width: number;
  /** Degrees, clockwise as a screen turns. */
  readonly turn: number;
  readonly anchor: 'start' | 'middle' | 'end';
  readonly chosen: boolean;
}

export interface Ink {
  /** Path data by the look of its line: `thick solid`, `thin center`, `fill`, each with ` chosen` where it is of a chosen piece. */
  readonly paths: ReadonlyMap<string, string>;
  readonly texts: readonly InkText[];
}

/** `chosen`: keys of the pieces that are shown with heavier lines. */
export function inkOf(primitives: readonly Primitive[], chosen: ReadonlySet<string>): Ink {
  const paths = new Map<string, string[]>();
  const texts: InkText[] = [];
  const put = (look: string, d: string): void => {
    const list = paths.get(look);
    if (list === undefined) paths.set(look, [d]);
    else list.push(d);
  };
  for (const item of primitives) {
    const marked = item.kind === 'callout' && item.pieces.some((key) => chosen.has(key));
    for (const stroke of strokesOf([item])) {
      if (stroke.kind === 'text') texts.push(inkText(stroke, marked));
      else put(lookOf(stroke, marked || ('piece' in stroke && stroke.piece !== undefined && chosen.has(stroke.piece))), pathOf(stroke));
    }
  }
  return { paths: new Map([...paths].map(([look, list]) => [look, list.join('')])), texts };
}

type Drawn = Exclude<Stroke, { readonly kind: 'text' }>;

function lookOf(stroke: Drawn, chosen: boolean): string {
  const look = 'pen' in stroke ? penLook(stroke.pen) : 'fill';
  return chosen ? `${look} chosen` : look;
}

const penLook = (pen: Pen): string => `${pen.weight} ${pen.dash}`;

function pathOf(stroke: Drawn): string {
  switch (stroke.kind) {
    case 'line':
      return `M${at(stroke.a)}L${at(stroke.b)}`;
    case 'arc': {
      const stops = Math.abs(stroke.sweep) > Math.PI ? [0.5, 1] : [1];
      const r = figure(stroke.radius);
      // Turned over with y: counter-clockwise in the plan is sweep 0 on the screen.
      return `M${at(curvePoint(stroke, 0))}${stops.map((stop) => `A${r} ${r} 0 0 ${stroke.sweep > 0 ? '0' : '1'} ${at(curvePoint(stroke, stop))}`).join('')}`;
    }
    case 'circle':
    case 'dot': {
      const { center: { x, y }, radius } = stroke;
      const r = figure(radius);
      return `M${at({ x: x - radius, y })}A${r} ${r} 0 1 0 ${at({ x: x + radius, y })}A${r} ${r} 0 1 0 ${at({ x: x - radius, y })}Z`;
    }
    case 'fill':
      return `M${stroke.points.map(at).join('L')}Z`;
  }
}

function inkText(stroke: Extract<Stroke, { readonly kind: 'text' }>, chosen: boolean): InkText {
  return {
    text: stroke.text, x: stroke.at.x * PX, y: -stroke.at.y * PX, height: stroke.height * PX, width: stroke.width * PX,
    turn: (-stroke.rotation * 180) / Math.PI, anchor: stroke.anchor, chosen,
  };
}

/** Hundredths of a pixel are finer than a screen shows. */
const figure = (value: number): string => String(Math.round(value * PX * 100) / 100);
const at = ({ x, y }: Vec): string => `${figure(x)} ${figure(-y)}`;
