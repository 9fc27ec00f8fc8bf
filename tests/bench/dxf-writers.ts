import Drawing from 'dxf-writer';
import makerjs from 'makerjs';
import { type Font } from '../../core/drafting/font.ts';
import { type Sheet, type Stroke, strokesOf } from '../../core/drafting/primitives.ts';
import { writeDxf } from '../../core/writers/index.ts';
import { best } from './timing.ts';

const RUNS = 5;
type Plain = Extract<Stroke, { kind: 'line' | 'arc' | 'circle' }>;

const degrees = (angle: number): number => (angle * 180) / Math.PI;
const ends = (arc: Extract<Plain, { kind: 'arc' }>): readonly [number, number] => {
  const other = arc.start + arc.sweep;
  return arc.sweep >= 0 ? [degrees(arc.start), degrees(other)] : [degrees(other), degrees(arc.start)];
};

/**
 * Our writer beside two libraries' in one run, per entity. They write bare lines, arcs and circles of the same drawings; ours writes
 * those, the texts, the fills, and a DIMENSION with its block for each dimension, with owners and layouts.
 */
export function dxfRows(sheets: readonly Sheet[], font: Font): string[][] {
  const strokes = sheets.map((sheet) => strokesOf(sheet.primitives));
  const plain = strokes.map((all) => all.filter((stroke): stroke is Plain => stroke.kind === 'line' || stroke.kind === 'arc' || stroke.kind === 'circle'));
  const count = (lists: readonly (readonly unknown[])[]): number => lists.reduce((sum, list) => sum + list.length, 0);
  const row = (name: string, entities: number, took: number, bytes: number): string[] =>
    [name, String(entities), `${took.toFixed(1)} ms`, `${((took * 1000) / entities).toFixed(2)} us`, `${(bytes / 1024).toFixed(0)} KB`];
  let bytes = 0;
  const timed = (write: (index: number) => string): number => best(RUNS, () => { bytes = 0; }, () => {
    sheets.forEach((_, index) => { bytes += write(index).length; });
  });
  const ours = timed((index) => writeDxf(sheets[index]!, font));
  const rows = [['DXF of all drawings', 'entities', 'all', 'each', 'written'], row('ours, whole drawings', count(strokes), ours, bytes)];
  const maker = timed((index) => makerDxf(plain[index]!));
  rows.push(row('makerjs exporter, bare', count(plain), maker, bytes));
  const writer = timed((index) => writerDxf(plain[index]!));
  rows.push(row('dxf-writer, bare', count(plain), writer, bytes));
  return rows;
}

function makerDxf(strokes: readonly Plain[]): string {
  const paths: Record<string, makerjs.IPath> = {};
  strokes.forEach((stroke, index) => {
    const name = `p${String(index)}`;
    if (stroke.kind === 'line') paths[name] = new makerjs.paths.Line([stroke.a.x, stroke.a.y], [stroke.b.x, stroke.b.y]);
    else if (stroke.kind === 'circle') paths[name] = new makerjs.paths.Circle([stroke.center.x, stroke.center.y], stroke.radius);
    else paths[name] = new makerjs.paths.Arc([stroke.center.x, stroke.center.y], stroke.radius, ...ends(stroke));
  });
  return makerjs.exporter.toDXF({ paths });
}

function writerDxf(strokes: readonly Plain[]): string {
  const drawing = new Drawing();
  for (const stroke of strokes) {
    if (stroke.kind === 'line') drawing.drawLine(stroke.a.x, stroke.a.y, stroke.b.x, stroke.b.y);
    else if (stroke.kind === 'circle') drawing.drawCircle(stroke.center.x, stroke.center.y, stroke.radius);
    else drawing.drawArc(stroke.center.x, stroke.center.y, stroke.radius, ...ends(stroke));
  }
  return drawing.toDxfString();
}
