/** The deck of a cleated ramp laid out flat, slope then dock: planks, and cleats to their lower edges from the foot. */
import { inches } from '../../base/quantity.ts';
import { sheetPoint, viewPoint } from '../../base/points.ts';
import { bandHeight, bandWidth } from '../../drafting/band.ts';
import { PENS, measureText, printSize } from '../../drafting/kit.ts';
import { type BandLabel, type Shape, type View } from '../../drafting/model.ts';
import { runningDepth } from '../../drafting/running.ts';
import { footHeight } from '../../drafting/view.ts';
import { type CleatFigures, type Ramp } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { type Block } from '../flow.ts';
import { type Page } from '../input.ts';
import { scalesOf } from '../scales.ts';
import { line, rectangle } from './shapes.ts';

interface Part {
  readonly from: number;
  readonly to: number;
  /** What is dimensioned in it, from its own beginning. */
  readonly at: readonly number[];
}

/** Blocks that together hold the whole deck, each with as many cleats as it has room to dimension. */
export function rolledDeck(page: Page, ramp: Ramp, surface: CleatFigures, pieces: readonly Piece[]): Block[] {
  const { figures } = ramp;
  const end = figures.slopeLength + figures.dockLength;
  const stops = [...surface.cleats, figures.slopeLength, ...(figures.dockLength > 1e-6 ? [end] : [])];
  const row = page.kit.up + page.kit.down + 2 * page.kit.clear + 0.004;
  const most = Math.max(3, Math.floor((page.room.width - 6 * page.kit.h) / row) - 2);
  const count = Math.ceil(stops.length / most);
  const parts: Part[] = Array.from({ length: count }, (_, i) => {
    const [first, last] = [Math.round((i * stops.length) / count), Math.round(((i + 1) * stops.length) / count)];
    return { from: i === 0 ? 0 : stops[first - 1]!, to: stops[last - 1]!, at: stops.slice(first, last) };
  });
  return parts.map((part) => partBlock(page, ramp, surface, pieces, part, count > 1));
}

function partBlock(page: Page, ramp: Ramp, surface: CleatFigures, pieces: readonly Piece[], part: Part, many: boolean): Block {
  const { kit } = page;
  const { width: wide } = ramp.brief;
  // A cleat that begins at the part's end is drawn whole.
  const end = part.to + (surface.cleats.includes(inches(part.to)) ? surface.cleat : 0);
  const shown = pieces.filter(({ place }) => spot(ramp, place) + size(place, surface) > part.from + 1e-6 && spot(ramp, place) < end - 1e-6);
  const labels = labelsOf(ramp, surface, shown, part.from, end);
  const marks = labels.reduce((sum, { text }) => sum + bandWidth(kit, text), 0);
  const longest = Math.max(...part.at.map((at) => measureText(kit, printSize(kit, at - part.from))));
  const below = runningDepth(kit, 2 * kit.h, longest) + 0.02;
  const room = { width: page.room.width - 8 * kit.h, height: 0.45 * page.room.height };
  const list = scalesOf(page.block.units);
  const scale = list.find((one) => (end - part.from) * one.scale <= room.width && wide * one.scale <= room.height) ?? list[list.length - 1]!;
  const print = (value: number): string => printSize(kit, value);
  const title = say(many ? 'drawings.ramp.rolledOn' : 'drawings.ramp.rolled', { ramp: ramp.name, from: print(part.from), to: print(end) });
  const row = kit.up + kit.down + 2 * kit.clear + 0.004;
  const width = Math.max((end - part.from) * scale.scale + 8 * kit.h, 30 * kit.h, marks, (part.at.length + 2) * row);
  const foot = footHeight(kit, { title, scaleText: scale.text }, page.block, width);
  const height = foot + below + wide * scale.scale + bandHeight(kit);
  const left = Math.max(4 * kit.h, (width - (end - part.from) * scale.scale) / 2);
  return {
    width,
    height,
    label: ramp.name,
    place: (x, y) => {
      const view: View = {
        id: `deck ${ramp.name} ${String(Math.round(part.from))}`,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at: sheetPoint(x + left - part.from * scale.scale, y + foot + below),
        box: { x, y, width, height },
        shapes: shapesOf(ramp, surface, shown, part.from, end),
        dimensions: [],
        runnings: [{ along: 'x', datum: viewPoint(part.from, 0), at: part.at.map((at) => viewPoint(at, 0)), line: 2 * kit.h }],
        bands: [{ top: wide, labels }],
        callouts: [],
      };
      return { views: [view] };
    },
  };
}

/** Where a plank or cleat begins along the laid-out deck. */
function spot({ figures }: Ramp, place: Piece['place']): number {
  if (place.kind === 'cleat') return place.up;
  if (place.kind === 'deck') return place.from + (place.part === 'dock' ? figures.slopeLength : 0);
  return NaN;
}

const size = (place: Piece['place'], surface: CleatFigures): number => (place.kind === 'deck' ? place.to - place.from : surface.cleat);

function shapesOf(ramp: Ramp, surface: CleatFigures, shown: readonly Piece[], from: number, end: number): Shape[] {
  const wide = ramp.brief.width;
  return [
    ...shown.flatMap((piece) => {
      const at = spot(ramp, piece.place);
      const [low, high] = [Math.max(at, from), Math.min(at + size(piece.place, surface), end)];
      return rectangle(piece.kind === 'cleat' ? PENS.outline : PENS.thin, low, high, 0, wide, piece.key);
    }),
    line(PENS.outline, { x: from, y: 0 }, { x: end, y: 0 }),
    line(PENS.outline, { x: from, y: wide }, { x: end, y: wide }),
  ];
}

/** One label for each mark, on the first piece that bears it. */
function labelsOf(ramp: Ramp, surface: CleatFigures, shown: readonly Piece[], from: number, end: number): BandLabel[] {
  const first = new Map<string, Piece>();
  for (const piece of shown) if (!first.has(piece.mark)) first.set(piece.mark, piece);
  return [...first.values()].map((piece) => {
    const at = spot(ramp, piece.place);
    const x = (Math.max(at, from) + Math.min(at + size(piece.place, surface), end)) / 2;
    return { text: piece.mark, x: inches(x), targets: [{ y: inches(ramp.brief.width * (piece.kind === 'cleat' ? 0.6 : 0.8)), piece: piece.key }] };
  });
}
