/**
 * A second opinion: dxf-writer, a library of its own, makes the same lines, arcs, circles and texts, and both files read alike.
 * The library writes no dimension, no block's content and no layout, and its file breaks the published structure (held below),
 * which is why our drawings are not made by it.
 */
import DxfWriter from 'dxf-writer';
import { describe, expect, test } from 'vitest';
import { type Stroke, LAYERS } from '../../core/drafting/primitives.ts';
import { writeDxf } from '../../core/writers/index.ts';
import { dxfBreaches } from './dxf-structure.ts';
import { arc, circle, font, inchSheet, line, pen, text } from './fixtures.ts';
import { byDxf, byDxfParser } from './seen.ts';

const strokes: Stroke[] = [
  line(1, 2, 7.5, 3.25), line(0.4, 10.6, 16.6, 10.6, pen('FRAME')), line(3, 3, 5, 5, pen('HIDDEN')), circle(8, 5, 1.2), arc(9, 6, 2.5, 0.4, 2.2), arc(4, 6, 1.5, -1.1, 4, pen('CENTER')),
  text('RAIL 12', 3, 8), text('turned', 5, 8, 'start', Math.PI / 3, 0.16, 'MARKS'),
];

/** 1:24, inches: a unit is an inch of steel. */
const K = 24;

function byOther(): string {
  const drawing = new DxfWriter();
  drawing.header('ACADVER', [[1, 'AC1015' as unknown as number]]);
  for (const layer of LAYERS) drawing.addLayer(layer, 7, 'CONTINUOUS');
  const degrees = (angle: number): number => (angle * 180) / Math.PI;
  for (const stroke of strokes) {
    drawing.setActiveLayer('pen' in stroke ? stroke.pen.layer : stroke.layer);
    if (stroke.kind === 'line') drawing.drawLine(stroke.a.x * K, stroke.a.y * K, stroke.b.x * K, stroke.b.y * K);
    if (stroke.kind === 'circle') drawing.drawCircle(stroke.center.x * K, stroke.center.y * K, stroke.radius * K);
    if (stroke.kind === 'arc') drawing.drawArc(stroke.center.x * K, stroke.center.y * K, stroke.radius * K, degrees(stroke.start), degrees(stroke.start + stroke.sweep));
    if (stroke.kind === 'text') drawing.drawText(stroke.at.x * K, stroke.at.y * K, stroke.height * K, degrees(stroke.rotation), stroke.text);
  }
  return drawing.toDxfString();
}

/** Kind, layer and figures to a millionth, in an order of their own, since the library sorts by layer. A text by its start only. */
function plainly(read: ReturnType<typeof byDxf>): string[] {
  return read.model.map((item) => {
    const figures = item.type === 'TEXT' ? [...item.figures.slice(0, 2), ...item.figures.slice(-1)] : item.figures;
    return `${item.type} ${item.layer} ${figures.map((figure) => figure.toFixed(6)).join(' ')} ${item.text ?? ''}`;
  }).sort();
}

describe('second opinion', () => {
  const ours = writeDxf({ ...inchSheet, primitives: strokes }, font);
  const other = byOther();

  test.each([['dxf-parser', byDxfParser], ['dxf', byDxf]] as const)('%s reads the same in both files', (_, reader) => {
    expect(plainly(reader(ours))).toHaveLength(strokes.length);
    expect(plainly(reader(ours))).toEqual(plainly(reader(other)));
  });

  test('the other file would not pass as a drawing of ours', () => {
    const breaches = dxfBreaches(`${other}\n`).join('\n');
    expect(breaches).toMatch(/LINE: wrong owner/);
    expect(breaches).toMatch(/layer is not once inside AcDbEntity/);
    expect(breaches).toMatch(/Model_Space and its layout do not name each other/);
  });
});
