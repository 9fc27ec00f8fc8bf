/** Small drawings to try the drafting step on. */
import { readFileSync } from 'node:fs';
import { type Vec, viewPoint } from '../../core/base/points.ts';
import { inches } from '../../core/base/quantity.ts';
import { readFont } from '../../core/drafting/font.ts';
import { roomInside } from '../../core/drafting/frame.ts';
import { type Kit, PENS, makeKit } from '../../core/drafting/kit.ts';
import { runningDepth } from '../../core/drafting/running.ts';
import { bandHeight } from '../../core/drafting/band.ts';
import { footHeight } from '../../core/drafting/view.ts';
import { type Drawing, type Shape, type TitleBlock, type View } from '../../core/drafting/model.ts';
import { paperNamed } from '../../core/drafting/paper.ts';
import { type Sheet } from '../../core/drafting/primitives.ts';
import { sheetPoint } from '../../core/base/points.ts';
import { sheetBreaches } from '../support/sheet-breaches.ts';

export const fontBytes = new Uint8Array(readFileSync(new URL('../../shared/fonts/drawing.ttf', import.meta.url)));
export const font = readFont(fontBytes);
export const block = (units: 'in' | 'mm' = 'in'): TitleBlock => ({
  project: 'Working facility at the north pens', client: 'A client with a long name of many words', revision: 'B', date: '2024-03-09', units,
});

/** Room that a sample keeps round its steel for running dimensions, marks and the view's foot. */
export interface Sample {
  readonly paper?: string;
  readonly units?: 'in' | 'mm';
  readonly scale?: number;
  readonly view?: Partial<Pick<View, 'shapes' | 'dimensions' | 'runnings' | 'bands' | 'callouts' | 'welds' | 'title'>>;
  readonly rest?: Partial<Pick<Drawing, 'tables' | 'notes'>>;
}

export const kitOf = (sample: Sample = {}): Kit => makeKit(font, sample.units ?? 'in', paperNamed(sample.paper ?? 'ANSI B'));

/** One view on the left three quarters of the room, room for bubbles on the right. Its (0, 0) is the steel's lower left corner. */
export function sampleDrawing(sample: Sample): Drawing {
  const kit = kitOf(sample);
  const paper = paperNamed(sample.paper ?? 'ANSI B');
  const room = roomInside(kit, paper, block(sample.units));
  const scale = sample.scale ?? 1 / 24;
  const box = { x: room.x, y: room.y, width: room.width * 0.7, height: room.height };
  const words = { title: sample.view?.title ?? 'Alley rolled out', scaleText: '1:24' };
  const foot = footHeight(kit, words, block(sample.units), box.width);
  const at = sheetPoint(box.x + 0.5 + 12 * kit.h, box.y + foot + runningDepth(kit, 0.4, 1.2));
  const view: View = {
    id: 'v1', ...words, scale, at, box,
    shapes: [], dimensions: [], runnings: [], bands: [], callouts: [], ...sample.view,
  };
  return {
    number: '101', title: 'Sample of a drawing', file: '101 sample', paper, scale, scaleText: 'as shown', views: [view],
    tables: sample.rest?.tables ?? [], notes: sample.rest?.notes ?? [],
    overflow: { x: room.x + room.width * 0.72, y: room.y, width: room.width * 0.28, height: room.height },
  };
}

/** Steel inches from the sample's zero to the right and up that its view has for steel. */
export function steelRoom(sample: Sample): Vec {
  const view = sampleDrawing(sample).views[0]!;
  const kit = kitOf(sample);
  return {
    x: (view.box.x + view.box.width - view.at.x - 0.6) / view.scale,
    y: (view.box.y + view.box.height - view.at.y - bandHeight(kit) - 0.1) / view.scale,
  };
}

export const box = (x: number, y: number, width: number, height: number, piece: string): Shape[] => {
  const corners = [viewPoint(x, y), viewPoint(x + width, y), viewPoint(x + width, y + height), viewPoint(x, y + height)];
  return corners.map((a, i) => ({ kind: 'curve', curve: { kind: 'line', a, b: corners[(i + 1) % 4]! }, pen: PENS.outline, piece }));
};
export const ring = (x: number, y: number, radius: number, piece: string): Shape => ({
  kind: 'circle', center: viewPoint(x, y), radius: inches(radius), pen: PENS.outline, piece,
});
export const breachesOf = (sheet: Sheet): string[] => sheetBreaches(sheet, font);
