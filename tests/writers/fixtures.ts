/** Made-up sheets with one of everything that a writer must write. Unequal figures, so that a swap shows. */
import { readFileSync } from 'node:fs';
import { type Font, readFont, textWidth } from '../../core/drafting/font.ts';
import { sheetPoint } from '../../core/base/points.ts';
import { inches, radians } from '../../core/base/quantity.ts';
import {
  type Callout, type Dash, type Dimension, type LayerName, type LineWeight, type Paper, type Pen, type PlacedView, type Primitive, type Sheet,
  type Stroke, LAYERS,
} from '../../core/drafting/primitives.ts';

export const font: Font = readFont(new Uint8Array(readFileSync(new URL('../../shared/fonts/drawing.ttf', import.meta.url))));

export const pen = (layer: LayerName, weight: LineWeight = 'thin', dash: Dash = 'solid'): Pen => ({ layer, weight, dash });

export const line = (x1: number, y1: number, x2: number, y2: number, at: Pen = pen('STEEL', 'thick')): Stroke => ({
  kind: 'line', pen: at, a: sheetPoint(x1, y1), b: sheetPoint(x2, y2),
});

export const arc = (x: number, y: number, radius: number, start: number, sweep: number, at: Pen = pen('STEEL', 'thick')): Stroke => ({
  kind: 'arc', pen: at, center: sheetPoint(x, y), radius: inches(radius), start: radians(start), sweep: radians(sweep),
});

export const circle = (x: number, y: number, radius: number, at: Pen = pen('STEEL', 'thick')): Stroke => ({
  kind: 'circle', pen: at, center: sheetPoint(x, y), radius: inches(radius),
});

export const fill = (layer: LayerName, ...points: readonly (readonly [number, number])[]): Stroke => ({
  kind: 'fill', layer, points: points.map(([x, y]) => sheetPoint(x, y)),
});

export const dot = (x: number, y: number, radius: number): Stroke => ({ kind: 'dot', layer: 'MARKS', center: sheetPoint(x, y), radius: inches(radius) });

export function text(
  words: string, x: number, y: number, anchor: 'start' | 'middle' | 'end' = 'start', rotation = 0, height = 0.1, layer: LayerName = 'NOTES',
): Stroke {
  return {
    kind: 'text', layer, text: words, at: sheetPoint(x, y), anchor, height: inches(height), rotation: radians(rotation),
    width: textWidth(font, words, height),
  };
}

/** What a person may have typed, good and bad. */
export const ODD_TEXTS = [
  `12'-3 5/8" [147.625]`, 'Ø 2 3/8 at 22.5° ± 1', '%%d is no degree, %%%c', '100%° of 5% %', '^J ^I ^^ caret^', '\\U+00D8 \\M+1A0D1 \\P{x}',
  'Räuberhöhle Łódź Ёлка Ωμέγα', 'emoji 🐄 and 𝄞', '<b>&amp; "quotes"</b> ]]>', 'two  spaces', ' led and trailed ', 'a\nb\tc\u0000d\u0007e\u0085f\u2028g',
  'half \ud83d pair', 'ﬁ fi AV To ﬀ', 'soft\u00adhyphen e\u0301 combining',
] as const;

const ANSI_B: Paper = { name: 'ANSI B', width: inches(17), height: inches(11), text: inches(0.1) };
const ISO_A3: Paper = { name: 'ISO A3', width: inches(420 / 25.4), height: inches(297 / 25.4), text: inches(0.1) };

const view = (id: string, scale: number, x: number, y: number, width: number, height: number): PlacedView => ({
  id, title: `View ${id}`, scale, scaleText: `1:${String(Math.round(1 / scale))}`, at: sheetPoint(x, y), box: { x, y, width, height },
});

/** A dimension of `value`, its points on paper, drawn plainly: a line, two arrowheads and a text. */
export function dimension(part: Partial<Dimension> & Pick<Dimension, 'measure' | 'view' | 'from' | 'to' | 'line' | 'value' | 'text' | 'textAt'>): Dimension {
  const { line: on, textAt } = part;
  return {
    kind: 'dimension', center: null, rotation: radians(0), chained: false, ...part,
    strokes: [
      line(on.x, on.y, on.x + 0.7, on.y, pen('SIZES')),
      fill('SIZES', [on.x, on.y], [on.x + 0.12, on.y + 0.02], [on.x + 0.12, on.y - 0.02]),
      text(part.text, textAt.x, textAt.y - 0.05, 'middle', 0, 0.1, 'SIZES'),
    ],
  };
}

/** One of each kind, in a view at `scale` whose corner is at (x, y) on the paper. Values are worked by hand from the paper points. */
function dimensions(id: string, scale: number, x: number, y: number): Dimension[] {
  const p = (dx: number, dy: number): ReturnType<typeof sheetPoint> => sheetPoint(x + dx, y + dy);
  const at = (part: Omit<Parameters<typeof dimension>[0], 'view'>): Dimension => dimension({ ...part, view: id });
  return [
    at({ measure: 'linear', from: p(0, 0), to: p(1.5, 0.4), line: p(0, 0.9), value: 1.5 / scale, text: 'across', textAt: p(0.7, 1) }),
    at({ measure: 'linear', from: p(0, 0), to: p(1.5, 0.4), line: p(-0.3, 0), rotation: radians(Math.PI / 2), value: 0.4 / scale, text: 'up', textAt: p(-0.3, 0.2) }),
    at({ measure: 'aligned', from: p(0, 0), to: p(0.8, 0.6), line: p(-0.06, 0.08), value: 1 / scale, text: 'aslant', textAt: p(0.4, 0.5) }),
    at({ measure: 'aligned', from: p(2, 0), to: p(2, 0.7), line: p(2.2, 0), value: 0.7 / scale, text: 'upright', textAt: p(2.2, 0.4) }),
    at({ measure: 'radius', from: p(1, 0), to: p(1.24, 0.32), line: p(1.24, 0.32), value: 0.4 / scale, text: 'R', textAt: p(1.4, 0.5) }),
    at({ measure: 'diameter', from: p(0.2, 0.2), to: p(0.5, 0.6), line: p(0.5, 0.6), value: 0.5 / scale, text: 'Ø', textAt: p(0.6, 0.8) }),
    at({ measure: 'angle', from: p(1.3, 0), to: p(1, 0.5), center: p(1, 0), line: p(1.2, 0.2), value: Math.PI / 2, text: '90°', textAt: p(1.3, 0.3) }),
    at({ measure: 'angle', from: p(1, 0.3), to: p(1.5, 0), center: p(1, 0), line: p(0.8, -0.2), value: 1.5 * Math.PI, text: '270°', textAt: p(0.7, -0.3) }),
    at({ measure: 'arc', from: p(1.3, 0), to: p(1, 0.3), center: p(1, 0), line: p(1.2, 0.2), value: (0.3 * Math.PI) / 2 / scale, text: 'arc', textAt: p(1.3, 0.3) }),
    at({ measure: 'linear', from: p(0, 0), to: p(0.7, 0), line: p(0, -0.4), value: 0.7 / scale, text: `9'-4 1/16" {x}`, textAt: p(0.3, -0.4), chained: true }),
  ];
}

const callout = (id: string, mark: string, x: number, y: number): Callout => ({
  kind: 'callout', view: id, text: mark, pieces: [`piece-${mark}`], targets: [sheetPoint(x, y)],
  strokes: [line(x, y, x + 0.4, y + 0.3, pen('MARKS')), dot(x, y, 0.03), text(mark, x + 0.42, y + 0.3, 'start', 0, 0.1, 'MARKS')],
});

function everyStroke(): Stroke[] {
  return [
    ...LAYERS.map((layer, k) => line(1, 7 + k * 0.1, 3.25, 7 + k * 0.1, pen(layer, k % 2 === 0 ? 'thick' : 'thin'))),
    line(1, 8, 3.5, 8.25, pen('HIDDEN', 'thin', 'hidden')),
    line(1, 8.25, 3.5, 8.5, pen('CENTER', 'thin', 'center')),
    line(1, 8.5, 3.5, 8.75, pen('STEEL', 'thick', 'hidden')),
    arc(5, 8, 0.75, 0.3, 2),
    arc(6.5, 8, 0.5, 0.3, -2, pen('HIDDEN', 'thin', 'hidden')),
    arc(8, 8, 0.6, -1, 5.5),
    arc(9.5, 8, 0.6, 1, -6),
    arc(11, 8, 0.45, 0.5, 2 * Math.PI),
    arc(12, -40, 48.2, Math.PI / 2 - 0.01, 0.02, pen('CENTER', 'thin', 'center')),
    circle(12.5, 7, 0.35),
    circle(13.5, 7, 0.2, pen('HIDDEN', 'thin', 'hidden')),
    fill('FRAME', [14, 7], [15, 7], [15, 7.1], [14, 7.1]),
    fill('SIZES', [14, 7.5], [14.3, 7.55], [14.3, 7.45]),
    dot(15.5, 7.5, 0.05),
  ];
}

function texts(): Stroke[] {
  return [
    ...ODD_TEXTS.map((words, k) => text(words, 0.75, 6.4 - 0.17 * k)),
    text('middle', 8.5, 6.4, 'middle'), text('end of it', 8.5, 6.2, 'end'),
    text('turned up', 12.5, 5, 'start', Math.PI / 2), text('aslant the other way', 14, 5.5, 'middle', -0.4, 0.16, 'SIZES'),
    text('over the top', 15.5, 6, 'end', Math.PI, 0.1, 'MARKS'), text('', 9, 9), text('   ', 9, 9.1),
  ];
}

const border = (paper: Paper): Stroke[] => {
  const [w, h] = [paper.width - 0.4, paper.height - 0.4];
  return [line(0.4, 0.4, w, 0.4, pen('FRAME', 'thick')), line(w, 0.4, w, h, pen('FRAME', 'thick')), line(w, h, 0.4, h, pen('FRAME', 'thick')), line(0.4, h, 0.4, 0.4, pen('FRAME', 'thick'))];
};

function sheet(number: string, units: 'in' | 'mm', paper: Paper, scale: number, views: PlacedView[], primitives: Primitive[]): Sheet {
  return { number, title: 'plan & <odd> "sheet"', file: `${number} plan`, paper, scale, units, views, primitives: [...border(paper), ...primitives] };
}

/** Inches: a plan at 1:24 with a detail at 1:4 on it. */
export const inchSheet: Sheet = sheet('101', 'in', ANSI_B, 1 / 24, [view('plan', 1 / 24, 1, 1, 7, 3), view('detail', 1 / 4, 9, 1, 6, 3)], [
  ...everyStroke(), ...texts(), ...dimensions('plan', 1 / 24, 2, 2), ...dimensions('detail', 1 / 4, 10, 2), callout('plan', 'R12', 5, 3), callout('detail', 'P-4', 13, 3),
]);

/** Millimeters: 1:30, with a detail at 1:4. */
export const metricSheet: Sheet = sheet('102', 'mm', ISO_A3, 1 / 30, [view('plan', 1 / 30, 1, 1, 7, 3), view('detail', 1 / 4, 9, 1, 6, 3)], [
  ...everyStroke(), ...texts(), ...dimensions('plan', 1 / 30, 2, 2), ...dimensions('detail', 1 / 4, 10, 2), callout('plan', 'R12', 5, 3),
]);

/** Nothing to scale: texts and rules. */
export const coverSheet: Sheet = sheet('100', 'in', ANSI_B, 1, [], [line(1, 9, 16, 9, pen('FRAME')), text('Cover', 8.5, 9.5, 'middle', 0, 0.25)]);

export const sheets: readonly Sheet[] = [coverSheet, inchSheet, metricSheet];
