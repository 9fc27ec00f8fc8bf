/** What a cutting table reads: DXF of version R12 (AC1009), LINE, ARC and CIRCLE on two layers and nothing else. */
import makerjs, { type IModel, type IPath, type IPathArc, type IPathCircle, type IPathLine, type IPoint } from 'makerjs';
import { MM_PER_INCH } from '../base/quantity.ts';
import { startTags, type Tags } from './dxf/tags.ts';

/** Colors by their number, so that the layers are told apart on a screen; a table goes by the layer's name. */
const LAYERS = [{ name: '0', color: 7 }, { name: 'CUT', color: 7 }, { name: 'ETCH', color: 1 }] as const;
const INSUNITS = { in: 1, mm: 4 } as const;

/**
 * A model in inches as a table's file, one unit an inch or a millimeter, full size. The model's paths come in its own order. Throws on
 * a path of another kind, off the two layers, or of no finite size: the model was to be checked before.
 */
export function writeTableFile(model: IModel, units: 'in' | 'mm'): string {
  const tags = startTags();
  section(tags, 'HEADER', () => {
    tags.put(9, '$ACADVER');
    tags.put(1, 'AC1009');
    tags.put(9, '$INSUNITS');
    tags.put(70, INSUNITS[units]);
  });
  section(tags, 'TABLES', () => {
    table(tags, 'LTYPE', 1, () => {
      tags.put(0, 'LTYPE');
      tags.put(2, 'CONTINUOUS');
      tags.put(70, 0);
      tags.put(3, 'Solid line');
      tags.put(72, 65);
      tags.put(73, 0);
      tags.real(40, 0);
    });
    table(tags, 'LAYER', LAYERS.length, () => {
      for (const { name, color } of LAYERS) {
        tags.put(0, 'LAYER');
        tags.put(2, name);
        tags.put(70, 0);
        tags.put(62, color);
        tags.put(6, 'CONTINUOUS');
      }
    });
  });
  section(tags, 'ENTITIES', () => {
    const per = units === 'mm' ? MM_PER_INCH : 1;
    makerjs.model.walk(model, { onPath: ({ pathContext, layer }) => { entity(tags, pathContext, layer, per); } });
  });
  tags.put(0, 'EOF');
  return `${tags.lines.join('\n')}\n`;
}

function section(tags: Tags, name: string, fill: () => void): void {
  tags.put(0, 'SECTION');
  tags.put(2, name);
  fill();
  tags.put(0, 'ENDSEC');
}

function table(tags: Tags, name: string, entries: number, fill: () => void): void {
  tags.put(0, 'TABLE');
  tags.put(2, name);
  tags.put(70, entries);
  fill();
  tags.put(0, 'ENDTAB');
}

function entity(tags: Tags, path: IPath, layer: string, per: number): void {
  if (layer !== 'CUT' && layer !== 'ETCH') throw new Error(`not a layer of a table's file: ${layer}`);
  const begin = (kind: string): void => {
    tags.put(0, kind);
    tags.put(8, layer);
  };
  const point = (code: number, at: IPoint): void => {
    tags.point(code, { x: at[0]! * per, y: at[1]! * per });
  };
  if (makerjs.isPathLine(path)) {
    const { origin, end } = path as IPathLine;
    begin('LINE');
    point(10, origin);
    point(11, end);
  } else if (makerjs.isPathArc(path)) {
    const { origin, radius, startAngle, endAngle } = path as IPathArc;
    begin('ARC');
    point(10, origin);
    tags.real(40, positive(radius) * per);
    tags.fine(50, turn(startAngle));
    tags.fine(51, turn(endAngle));
  } else if (makerjs.isPathCircle(path)) {
    const { origin, radius } = path as IPathCircle;
    begin('CIRCLE');
    point(10, origin);
    tags.real(40, positive(radius) * per);
  } else throw new Error(`not a path of a table's file: ${String(path.type)}`);
}

/** Degrees from 0 up to a whole turn. */
const turn = (angle: number): number => ((angle % 360) + 360) % 360;

function positive(radius: number): number {
  if (!(radius > 0)) throw new Error(`radius ${String(radius)}`);
  return radius;
}
