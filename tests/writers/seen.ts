/** What a reader saw, in one form for all of them, and what it ought to have seen, worked from the sheet alone. */
import DxfParser, { type IEntity } from 'dxf-parser';
import { type DxfEntity, parseString } from 'dxf';
import { type Sheet, type Stroke } from '../../core/drafting/primitives.ts';

export interface Seen {
  readonly type: string;
  readonly layer: string;
  /** Coordinates, then radius, then angles in degrees; a text's two ends and its height. */
  readonly figures: readonly number[];
  /** As it stands in the file. */
  readonly text: string | null;
}

const xy = (...points: readonly { readonly x: number; readonly y: number }[]): number[] => points.flatMap(({ x, y }) => [x, y]);
const degrees = (angle: number): number => (((angle * 180) / Math.PI) % 360 + 360) % 360;

/** Drawing units for an inch of paper. */
export const unitOf = (sheet: Sheet): number => (sheet.units === 'mm' ? 25.4 : 1) / sheet.scale;

/** A stroke as a reader ought to see it; null where it leaves nothing on the paper. Texts are not spelled here. */
export function expected(stroke: Stroke, k: number): Omit<Seen, 'text'> | null {
  const at = (point: { readonly x: number; readonly y: number }): { x: number; y: number } => ({ x: point.x * k, y: point.y * k });
  const layer = 'pen' in stroke ? stroke.pen.layer : stroke.layer;
  switch (stroke.kind) {
    case 'line':
      return { type: 'LINE', layer, figures: xy(at(stroke.a), at(stroke.b)) };
    case 'circle':
      return { type: 'CIRCLE', layer, figures: [...xy(at(stroke.center)), stroke.radius * k] };
    case 'arc': {
      const ends = [stroke.start, stroke.start + stroke.sweep];
      if (stroke.sweep < 0) ends.reverse();
      const angles = Math.abs(Math.abs(stroke.sweep) - 2 * Math.PI) < 1e-12 ? [] : ends.map(degrees);
      return { type: angles.length === 0 ? 'CIRCLE' : 'ARC', layer, figures: [...xy(at(stroke.center)), stroke.radius * k, ...angles] };
    }
    case 'fill': {
      const [a, b, c, d] = stroke.points.map(at);
      return { type: 'SOLID', layer, figures: xy(a!, b!, d ?? c!, c!) };
    }
    case 'dot': {
      const half = stroke.radius / 2;
      const ends = [-half, half].flatMap((dx) => [...xy(at({ x: stroke.center.x + dx, y: stroke.center.y })), 1]);
      return { type: 'LWPOLYLINE', layer, figures: [...ends, stroke.radius * k] };
    }
    case 'text': {
      if (stroke.text.trim() === '') return null;
      const shift = { start: 0, middle: -0.5, end: -1 }[stroke.anchor] * stroke.width;
      const end = (by: number): { x: number; y: number } =>
        at({ x: stroke.at.x + by * Math.cos(stroke.rotation), y: stroke.at.y + by * Math.sin(stroke.rotation) });
      return { type: 'TEXT', layer, figures: [...xy(end(shift), end(shift + stroke.width)), stroke.height * k] };
    }
  }
}

interface ParserEntity extends IEntity {
  readonly vertices: readonly { readonly x: number; readonly y: number; readonly bulge: number }[];
  readonly points: readonly { readonly x: number; readonly y: number }[];
  readonly center: { readonly x: number; readonly y: number };
  readonly startPoint: { readonly x: number; readonly y: number };
  /** Missing where a text is not aligned. */
  readonly endPoint?: { readonly x: number; readonly y: number };
  readonly radius: number;
  readonly startAngle: number;
  readonly endAngle: number;
  readonly width: number;
  readonly text: string;
  readonly textHeight: number;
  readonly block: string;
}

export interface ReadBack {
  readonly model: readonly Seen[];
  /** Content of each dimension's block, in the order of the dimensions. */
  readonly dimensions: readonly (readonly Seen[])[];
  readonly units: unknown;
}

/** Read by dxf-parser. */
export function byDxfParser(text: string): ReadBack {
  const file = new DxfParser().parseSync(text);
  if (file === null) throw new Error('dxf-parser read nothing');
  const entities = file.entities as ParserEntity[];
  return {
    model: entities.filter((item) => item.type !== 'DIMENSION').map(parserSeen),
    dimensions: entities.filter((item) => item.type === 'DIMENSION').map((item) => (file.blocks[item.block]?.entities as ParserEntity[]).map(parserSeen)),
    units: file.header['$INSUNITS'],
  };
}

function parserSeen(item: ParserEntity): Seen {
  const figures = {
    LINE: () => xy(...item.vertices), CIRCLE: () => [...xy(item.center), item.radius], SOLID: () => xy(...item.points),
    ARC: () => [...xy(item.center), item.radius, degrees(item.startAngle), degrees(item.endAngle)],
    LWPOLYLINE: () => [...item.vertices.flatMap(({ x, y, bulge }) => [x, y, bulge]), item.width],
    TEXT: () => [...xy(item.startPoint, item.endPoint ?? item.startPoint), item.textHeight],
  }[item.type];
  return { type: item.type, layer: item.layer, figures: figures?.() ?? [], text: item.type === 'TEXT' ? item.text : null };
}

/** Read by dxf, which leaves out the width of a polyline. */
export function byDxf(text: string): ReadBack {
  const file = parseString(text);
  const block = (name: string): readonly DxfEntity[] => file.blocks.find((item) => item.name === name)?.entities ?? [];
  return {
    model: file.entities.filter((item) => item.type !== 'DIMENSION').map(dxfSeen),
    dimensions: file.entities.filter((item) => item.type === 'DIMENSION').map((item) => block(item.block).map(dxfSeen)),
    units: file.header.insUnits,
  };
}

function dxfSeen(item: DxfEntity): Seen {
  const figures = {
    LINE: () => xy(item.start, item.end), CIRCLE: () => [item.x, item.y, item.r], SOLID: () => xy(...item.corners),
    ARC: () => [item.x, item.y, item.r, degrees(item.startAngle), degrees(item.endAngle)],
    LWPOLYLINE: () => item.vertices.flatMap(({ x, y, bulge }) => [x, y, bulge ?? 0]),
    TEXT: () => [item.x, item.y, item.x2, item.y2, item.textHeight],
  }[item.type];
  return { type: item.type, layer: item.layer, figures: figures?.() ?? [], text: item.type === 'TEXT' ? item.string : null };
}
