/** Strokes as elements of an SVG. */
import { type Vec } from '../../base/points.ts';
import { curvePoint } from '../../base/curve.ts';
import { toDegrees } from '../../base/quantity.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { type Font, emSize } from '../../drafting/font.ts';
import { type Stroke } from '../../drafting/primitives.ts';
import { type TextStroke, baseline } from '../baseline.ts';
import { plainNumber } from '../plain-number.ts';
import { escapeXml } from './escape.ts';
import { figure, place } from './place.ts';

/** One stroke as one element. `height` is the paper's, from which y is counted down. */
export function svgStroke(stroke: Stroke, height: number, font: Font): string {
  switch (stroke.kind) {
    case 'line':
      return `<line ${xy('1', stroke.a, height)} ${xy('2', stroke.b, height)}/>`;
    case 'arc':
      return arcElement(stroke, height);
    case 'circle':
      return circleElement(stroke.center, stroke.radius, height);
    case 'fill':
      return `<polygon points="${stroke.points.map((point) => place(point, height)).join(' ')}"/>`;
    case 'dot':
      return circleElement(stroke.center, stroke.radius, height);
    case 'text':
      return textElement(stroke, height, font);
  }
}

const xy = (name: string, at: Vec, height: number): string => `x${name}="${figure(at.x)}" y${name}="${figure(height - at.y)}"`;

const circleElement = (center: Vec, radius: number, height: number): string =>
  `<circle cx="${figure(center.x)}" cy="${figure(height - center.y)}" r="${figure(radius)}"/>`;

/** An arc as one path; past a half turn in two, since an A that nearly closes is drawn from too few figures. */
function arcElement(arc: Extract<Stroke, { readonly kind: 'arc' }>, height: number): string {
  const turn = Math.abs(arc.sweep);
  if (turn >= 2 * Math.PI - SAME_ANGLE) return circleElement(arc.center, arc.radius, height);
  const curve = { kind: 'arc', center: arc.center, radius: arc.radius, start: arc.start, sweep: arc.sweep } as const;
  const stops = turn > Math.PI ? [0.5, 1] : [1];
  const radius = figure(arc.radius);
  // Counter-clockwise on paper is sweep-flag 0 where y runs down.
  const flags = `0 0 ${arc.sweep > 0 ? '0' : '1'}`;
  const legs = stops.map((stop) => `A${radius} ${radius} ${flags} ${place(curvePoint(curve, stop), height)}`);
  return `<path d="M${place(curvePoint(curve, 0), height)} ${legs.join(' ')}"/>`;
}

/**
 * A text from the start of its baseline. textLength holds it to its measured width also where a character comes from another font
 * (an emoji) or the embedded one is not read at all.
 */
function textElement(text: TextStroke, height: number, font: Font): string {
  const { from } = baseline(text);
  const x = figure(from.x);
  const y = figure(height - from.y);
  const turn = plainNumber(-toDegrees(text.rotation), 9);
  const rotate = turn === '0' ? '' : ` transform="rotate(${turn} ${x} ${y})"`;
  const fitted = text.width > 0 ? ` textLength="${figure(text.width)}" lengthAdjust="spacingAndGlyphs"` : '';
  return `<text x="${x}" y="${y}" font-size="${figure(emSize(font, text.height))}"${fitted}${rotate}>${escapeXml(text.text)}</text>`;
}
