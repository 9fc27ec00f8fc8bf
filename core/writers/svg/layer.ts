/** One layer of an SVG: a group for each pen, and one for what is filled and written. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type FontSize } from '../../drafting/font.ts';
import { type LayerName, type Pen, type Stroke, DASHES, LINE_WEIGHT_MM } from '../../drafting/primitives.ts';
import { svgStroke } from './stroke.ts';
import { figure } from './place.ts';

/** Strokes of one look. `look` are attributes of the group that they stand in. */
export interface SvgGroup {
  readonly look: Readonly<Record<string, string>>;
  readonly strokes: readonly Stroke[];
}

/** The strokes of a layer by their pens, in drawing order; none where nothing stands on it. */
export function svgGroups(layer: LayerName, strokes: readonly Stroke[]): readonly SvgGroup[] {
  const groups = new Map<string, { readonly look: SvgGroup['look']; readonly strokes: Stroke[] }>();
  for (const stroke of strokes) {
    const pen = 'pen' in stroke ? stroke.pen : null;
    if ((pen?.layer ?? ('layer' in stroke ? stroke.layer : null)) !== layer) continue;
    const key = pen === null ? '' : `${pen.weight} ${pen.dash}`;
    const group = groups.get(key) ?? { look: pen === null ? { fill: '#000', stroke: 'none' } : penLook(pen), strokes: [] };
    groups.set(key, group);
    group.strokes.push(stroke);
  }
  return [...groups.values()];
}

/** The lines of a layer's group in a file. `height` is the paper's. */
export function svgLayer(layer: LayerName, strokes: readonly Stroke[], height: number, font: FontSize): string[] {
  const groups = svgGroups(layer, strokes);
  if (groups.length === 0) return [];
  const inner = groups.flatMap((group) => {
    const look = Object.entries(group.look).map(([key, value]) => ` ${key}="${value}"`).join('');
    return [`<g${look}>`, ...group.strokes.map((stroke) => svgStroke(stroke, height, font)), '</g>'];
  });
  return [`<g class="${layer.toLowerCase()}">`, ...inner, '</g>'];
}

function penLook(pen: Pen): Record<string, string> {
  const dash = DASHES[pen.dash];
  return {
    'stroke-width': figure(LINE_WEIGHT_MM[pen.weight] / MM_PER_INCH),
    ...(dash.length === 0 ? {} : { 'stroke-dasharray': dash.map(figure).join(' ') }),
  };
}
