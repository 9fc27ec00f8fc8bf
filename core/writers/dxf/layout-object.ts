/** A LAYOUT: how a space is plotted, and the block record that holds it. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Vec } from '../../base/points.ts';
import { type Drawing } from './drawing.ts';

export interface LayoutInput {
  readonly handle: string;
  readonly owner: string;
  readonly record: string;
  readonly name: string;
  /** Of its tab; the model is 0. */
  readonly order: number;
}

const ORIGIN: Vec = { x: 0, y: 0 };
/** Group 70 of plot settings: plot lineweights, plot by plot styles, and, for the model, that it is the model. */
const PLOT_WEIGHTS_AND_STYLES = 128 + 32;
const MODEL = 1024;
/** Group 74: plot the limits (the model's are the paper), or the layout. */
const PLOT_LIMITS = 2;
const PLOT_LAYOUT = 5;

/** The model plots at its own scale: an inch (or millimeter) of paper for as many drawing units as the scale says. */
export function layoutObject(drawing: Drawing, layout: LayoutInput): void {
  const { tags, units, sheet } = drawing;
  const model = layout.order === 0;
  tags.put(0, 'LAYOUT');
  tags.put(5, layout.handle);
  tags.put(330, layout.owner);
  tags.put(100, 'AcDbPlotSettings');
  for (const [code, value] of [[1, ''], [2, ''], [4, ''], [6, '']] as const) tags.put(code, value);
  for (const code of [40, 41, 42, 43]) tags.real(code, 0); // margins
  tags.real(44, sheet.paper.width * MM_PER_INCH); // the format counts paper in millimeters always
  tags.real(45, sheet.paper.height * MM_PER_INCH);
  for (const code of [46, 47, 48, 49, 140, 141]) tags.real(code, 0);
  tags.real(142, 1);
  tags.real(143, model ? unitsPerPaperUnit(drawing) : 1);
  tags.put(70, PLOT_WEIGHTS_AND_STYLES + (model ? MODEL : 0));
  tags.put(72, units.metric ? 1 : 0);
  tags.put(73, 0);
  tags.put(74, model ? PLOT_LIMITS : PLOT_LAYOUT);
  tags.put(7, '');
  tags.put(75, 0);
  tags.fine(147, model ? 1 / unitsPerPaperUnit(drawing) : 1);
  tags.real(148, 0);
  tags.real(149, 0);
  layoutPart(drawing, layout, model ? units.perInch : units.metric ? MM_PER_INCH : 1);
}

function unitsPerPaperUnit({ units }: Drawing): number {
  return units.perInch / (units.metric ? MM_PER_INCH : 1);
}

function layoutPart({ tags, sheet }: Drawing, layout: LayoutInput, perInch: number): void {
  const corner: Vec = { x: sheet.paper.width * perInch, y: sheet.paper.height * perInch };
  tags.put(100, 'AcDbLayout');
  tags.put(1, layout.name);
  tags.put(70, 1);
  tags.put(71, layout.order);
  tags.point2(10, ORIGIN); // limits
  tags.point2(11, corner);
  tags.point(12, ORIGIN); // base point
  tags.point(14, ORIGIN); // extents
  tags.point(15, corner);
  tags.real(146, 0);
  tags.point(13, ORIGIN); // coordinate system
  tags.point(16, { x: 1, y: 0 });
  tags.point(17, { x: 0, y: 1 });
  tags.put(76, 1);
  tags.put(330, layout.record);
}
