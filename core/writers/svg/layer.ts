/** One layer of an SVG: a group for each pen, and one for what is filled and written. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Font } from '../../drafting/font.ts';
import { type LayerName, type Pen, type Stroke, DASHES, LINE_WEIGHT_MM } from '../../drafting/primitives.ts';
import { svgStroke } from './stroke.ts';
import { figure } from './place.ts';

/** The lines of a layer's group; none where nothing stands on it. `height` is the paper's. */
export function svgLayer(layer: LayerName, strokes: readonly Stroke[], height: number, font: Font): string[] {
  const groups = new Map<string, string[]>();
  for (const stroke of strokes) {
    const pen = 'pen' in stroke ? stroke.pen : null;
    if ((pen?.layer ?? ('layer' in stroke ? stroke.layer : null)) !== layer) continue;
    const look = pen === null ? 'fill="#000" stroke="none"' : penLook(pen);
    const group = groups.get(look) ?? [];
    groups.set(look, group);
    group.push(svgStroke(stroke, height, font));
  }
  if (groups.size === 0) return [];
  const inner = [...groups].flatMap(([look, lines]) => [`<g ${look}>`, ...lines, '</g>']);
  return [`<g class="${layer.toLowerCase()}">`, ...inner, '</g>'];
}

function penLook(pen: Pen): string {
  const width = `stroke-width="${figure(LINE_WEIGHT_MM[pen.weight] / MM_PER_INCH)}"`;
  const dash = DASHES[pen.dash];
  return dash.length === 0 ? width : `${width} stroke-dasharray="${dash.map(figure).join(' ')}"`;
}
