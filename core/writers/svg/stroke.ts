/** Strokes as elements of an SVG. */
import { type Vec } from '../../base/points.ts';
import { curvePoint } from '../../base/curve.ts';
import { toDegrees } from '../../base/quantity.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { type FontSize, emSize } from '../../drafting/font.ts';
import { type Stroke } from '../../drafting/primitives.ts';
import { type TextStroke, baseline } from '../baseline.ts';
import { cleanText } from '../clean-text.ts';
import { plainNumber } from '../plain-number.ts';
import { escapeXml } from './escape.ts';
import { figure, place } from './place.ts';

/** An element as data: for the file, which writes it, and for the screen, which makes it. */
export interface SvgElement {
  readonly name: 'line' | 'path' | 'circle' | 'polygon' | 'text';
  readonly attributes: Readonly<Record<string, string>>;
  /** What a `text` holds; null for the others. */
  readonly words: string | null;
}

/** One stroke as one element. `height` is the paper's, from which y is counted down. */
export function svgElement(stroke: Stroke, height: number, font: FontSize): SvgElement {
  switch (stroke.kind) {
    case 'line':
      return shape('line', { ...xy('1', stroke.a, height), ...xy('2', stroke.b, height) });
    case 'arc':
      return arcElement(stroke, height);
    case 'circle':
    case 'dot':
      return circleElement(stroke.center, stroke.radius, height);
    case 'fill':
      return shape('polygon', { points: stroke.points.map((point) => place(point, height)).join(' ') });
    case 'text':
      return textElement(stroke, height, font);
  }
}

/** The element as the file has it. */
export function svgStroke(stroke: Stroke, height: number, font: FontSize): string {
  const { name, attributes, words } = svgElement(stroke, height, font);
  const list = Object.entries(attributes).map(([key, value]) => ` ${key}="${value}"`).join('');
  return words === null ? `<${name}${list}/>` : `<${name}${list}>${escapeXml(words)}</${name}>`;
}

const shape = (name: SvgElement['name'], attributes: SvgElement['attributes']): SvgElement => ({ name, attributes, words: null });

const xy = (name: string, at: Vec, height: number): Record<string, string> => ({ [`x${name}`]: figure(at.x), [`y${name}`]: figure(height - at.y) });

const circleElement = (center: Vec, radius: number, height: number): SvgElement =>
  shape('circle', { cx: figure(center.x), cy: figure(height - center.y), r: figure(radius) });

/** An arc as one path; past a half turn in two, since an A that nearly closes is drawn from too few figures. */
function arcElement(arc: Extract<Stroke, { readonly kind: 'arc' }>, height: number): SvgElement {
  const turn = Math.abs(arc.sweep);
  if (turn >= 2 * Math.PI - SAME_ANGLE) return circleElement(arc.center, arc.radius, height);
  const curve = { kind: 'arc', center: arc.center, radius: arc.radius, start: arc.start, sweep: arc.sweep } as const;
  const stops = turn > Math.PI ? [0.5, 1] : [1];
  const radius = figure(arc.radius);
  // Counter-clockwise on paper is sweep-flag 0 where y runs down.
  const flags = `0 0 ${arc.sweep > 0 ? '0' : '1'}`;
  const legs = stops.map((stop) => `A${radius} ${radius} ${flags} ${place(curvePoint(curve, stop), height)}`);
  return shape('path', { d: `M${place(curvePoint(curve, 0), height)} ${legs.join(' ')}` });
}

/**
 * A text from the start of its baseline. textLength holds it to its measured width also where a character comes from another font
 * (an emoji) or the embedded one is not read at all.
 */
function textElement(text: TextStroke, height: number, font: FontSize): SvgElement {
  const { from } = baseline(text);
  const x = figure(from.x);
  const y = figure(height - from.y);
  const turn = plainNumber(-toDegrees(text.rotation), 9);
  return {
    name: 'text',
    attributes: {
      x, y,
      'font-size': figure(emSize(font, text.height)),
      ...(text.width > 0 ? { textLength: figure(text.width), lengthAdjust: 'spacingAndGlyphs' } : {}),
      ...(turn === '0' ? {} : { transform: `rotate(${turn} ${x} ${y})` }),
    },
    words: cleanText(text.text),
  };
}
