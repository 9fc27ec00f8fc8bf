/** A stock sheet as it will be cut: its plates where they lie, a mark for each kind of plate. */
import { crossings } from '../../base/crossing.ts';
import { contourBox, contourCurves } from '../../base/flat-curves.ts';
import { type Contour } from '../../base/flat-shape.ts';
import { inches } from '../../base/quantity.ts';
import { sheetPoint, viewPoint } from '../../base/points.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { bandHeight, bandWidth } from '../../drafting/band.ts';
import { PENS } from '../../drafting/kit.ts';
import { type BandLabel, type Shape, type View } from '../../drafting/model.ts';
import { footHeight } from '../../drafting/view.ts';
import { laidPlates, type LaidPlate, type NamedSheet, type ShopPlates } from '../../shop/nesting/index.ts';
import { say } from '../../text/index.ts';
import { type Block } from '../flow.ts';
import { rectangle } from '../gate-outline.ts';
import { type Page } from '../input.ts';
import { scalesOf } from '../scales.ts';

/** Share of a page's width and height that one sheet may take, so that several stand on it: more where there is much to see. */
const SHARES = { few: { wide: 0.22, tall: 0.16 }, many: { wide: 0.45, tall: 0.34 } } as const;
const FEW = 6;

export function sheetBlock(page: Page, { plates }: ShopPlates, sheet: NamedSheet, title: string): Block {
  const { kit, room } = page;
  const { long, short } = sheet.size;
  const list = scalesOf(page.block.units);
  const share = SHARES[sheet.parts.length <= FEW ? 'few' : 'many'];
  const scale = list.find((one) => long * one.scale <= room.width * share.wide && short * one.scale <= room.height * share.tall) ?? list[list.length - 1]!;
  const keyed = withKeys(laidPlates(plates, sheet.parts));
  const labels = labelsOf(keyed);
  const marks = labels.reduce((sum, label) => sum + bandWidth(kit, label.text), 0);
  const width = Math.min(room.width, Math.max(long * scale.scale, room.width * share.wide, marks + 2 * kit.h));
  const foot = footHeight(kit, { title, scaleText: scale.text }, page.block, width);
  const height = foot + short * scale.scale + bandHeight(kit);
  return {
    width,
    height,
    label: sheet.names[0]!,
    place: (x, y) => {
      const view: View = {
        id: sheet.names[0]!,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at: sheetPoint(x + (width - long * scale.scale) / 2, y + foot),
        box: { x, y, width, height },
        shapes: [...rectangle(PENS.thin, 0, long, 0, short), ...keyed.flatMap(({ laid, key }) => [laid.shape.outer, ...laid.shape.holes].flatMap((one) => contourShapes(one, key)))],
        dimensions: [],
        runnings: [],
        bands: [{ top: short, labels }],
        callouts: [],
      };
      return { views: [view] };
    },
  };
}

interface Keyed {
  readonly laid: LaidPlate;
  /** Of a piece that bears the plate's mark. */
  readonly key: string;
}

function withKeys(laid: readonly LaidPlate[]): readonly Keyed[] {
  const seen = new Map<string, number>();
  return laid.map((one) => {
    const { mark, pieces } = one.plate;
    const nth = seen.get(mark) ?? 0;
    seen.set(mark, nth + 1);
    return { laid: one, key: pieces[nth % pieces.length]! };
  });
}

function contourShapes(contour: Contour, piece: string): readonly Shape[] {
  const pen = PENS.outline;
  if (contour.kind === 'circle') return [{ kind: 'circle', pen, center: viewPoint(contour.center.x, contour.center.y), radius: inches(contour.radius), piece }];
  return contourCurves(contour).map((curve) => ({
    kind: 'curve',
    pen,
    piece,
    curve: curve.kind === 'line'
      ? { kind: 'line', a: viewPoint(curve.a.x, curve.a.y), b: viewPoint(curve.b.x, curve.b.y) }
      : { ...curve, center: viewPoint(curve.center.x, curve.center.y) },
  }));
}

/** One label a mark, with how many there are, on the topmost of them, in its upper half; no two leaders drop along one line. */
function labelsOf(keyed: readonly Keyed[]): readonly BandLabel[] {
  const groups = new Map<string, Keyed[]>();
  for (const one of keyed) groups.set(one.laid.plate.mark, [...(groups.get(one.laid.plate.mark) ?? []), one]);
  return [...groups].map(([mark, list], i) => {
    const top = list.toSorted((a, b) => contourBox(b.laid.shape.outer).high - contourBox(a.laid.shape.outer).high)[0]!;
    const { low, high } = contourBox(top.laid.shape.outer);
    const y = (low + 3 * high) / 4;
    const [left, right] = widthAt(top.laid.shape.outer, y);
    const text = list.length === 1 ? mark : say('nests.times', { mark, count: list.length });
    return { text, x: inches(left + ((right - left) * (i + 1)) / (groups.size + 1)), targets: [{ y: inches(y), piece: top.key }] };
  });
}

/** Where a level line first enters a plate and next leaves it: a bracket or a trapezoid does not fill its box. */
function widthAt(contour: Contour, y: number): readonly [number, number] {
  const { left, right } = contourBox(contour);
  if (contour.kind === 'circle') return [left, right];
  const level = { kind: 'line', a: { x: left - 1, y }, b: { x: right + 1, y } } as const;
  const places = contourCurves(contour).flatMap((curve) => crossings(level, curve)).map(({ x }) => x).toSorted((a, b) => a - b);
  const from = places[0] ?? left;
  return [from, places.find((x) => x > from + SAME_LENGTH) ?? right];
}
