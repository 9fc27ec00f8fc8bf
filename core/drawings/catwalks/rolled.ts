/** A stretch of deck with its parts laid flat side by side: from above, and its open side. As many views as its marks ask for. */
import { inches } from '../../base/quantity.ts';
import { type Vec } from '../../base/points.ts';
import { bandWidth } from '../../drafting/band.ts';
import { PENS } from '../../drafting/kit.ts';
import { type BandLabel, type Shape } from '../../drafting/model.ts';
import { type Catwalk, type DeckStretch } from '../../layout/index.ts';
import { deckBuild, type CatwalkPart } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { stacked, type Block } from '../flow.ts';
import { type Page } from '../input.ts';
import { line, outline, rectangle } from '../ramps/shapes.ts';
import { type Scale, scalesOf } from '../scales.ts';
import { type DeckPiece } from './shapes.ts';
import { besideSteel, RIGHT, sideBlock, type SideView } from './side-view.ts';

const ABOVE: readonly CatwalkPart[] = ['deck', 'bearer', 'cross', 'bracket'];
const OPEN: readonly CatwalkPart[] = ['toe', 'guard-post', 'top-rail', 'mid-rail', 'leg', 'foot'];

/** Consecutive parts of a stretch, laid flat. */
interface Chunk {
  readonly from: number;
  readonly to: number;
  readonly stops: readonly number[];
  readonly pieces: readonly DeckPiece[];
}

/** The smallest scale at which a stretch stays one view. */
const LEAST_SCALE = 1 / 24;

export function rolledBlocks(page: Page, catwalk: Catwalk, stretch: DeckStretch, pieces: readonly DeckPiece[], mark: string): Block[] {
  const own = pieces.filter(({ piece, place }) => piece.run === stretch.run && place.roll.length > 0 && (place.end === null || place.part === 'guard-post'));
  return chunksOf(page, catwalk, stretch, own).map((chunk, i, all) => {
    const names = { mark, run: stretch.run, side: say(`drawings.side.${stretch.side}`), part: i + 1, of: all.length };
    const views = [fromAbove(catwalk, chunk, mark, say(all.length > 1 ? 'drawings.catwalk.abovePart' : 'drawings.catwalk.above', names))];
    if (labelsOf(chunk.pieces, OPEN).length > 0) views.push(openSide(catwalk, chunk, mark, say(all.length > 1 ? 'drawings.catwalk.openPart' : 'drawings.catwalk.open', names)));
    const scale = scaleOf(page, views);
    return stacked(views.map((view) => sideBlock(page, { ...view, id: `${view.id} ${stretch.run} ${String(i)}` }, scale)));
  });
}

/** The largest scale at which all views of a chunk stand one over the other. */
function scaleOf(page: Page, views: readonly SideView[]): Scale {
  const list = scalesOf(page.block.units);
  const wide = page.room.width - besideSteel(page, views.flatMap(({ heights }) => heights)) - RIGHT * page.kit.h;
  const fits = (scale: Scale): boolean => scale.scale <= 1 / 8
    && views.every((view) => (view.right - view.left) * scale.scale <= wide)
    && stacked(views.map((view) => sideBlock(page, view, scale))).height <= page.room.height;
  return list.find(fits) ?? list[list.length - 1]!;
}

/** Cuts the stretch so that every view has room for its marks and its length. */
function chunksOf(page: Page, { deckHeight }: Catwalk, { parts }: DeckStretch, pieces: readonly DeckPiece[]): Chunk[] {
  const stops = [0];
  for (const { near, far } of parts) stops.push(stops[stops.length - 1]! + Math.max(near, far));
  const end = stops[stops.length - 1]!;
  const middle = ({ place: { roll } }: DeckPiece): number => (Math.min(...roll.map(({ x }) => x)) + Math.max(...roll.map(({ x }) => x))) / 2;
  const within = (i: number, j: number): Chunk => ({
    from: stops[i]!, to: stops[j]!, stops: stops.slice(i, j + 1),
    pieces: pieces.filter((one) => (i === 0 || middle(one) > stops[i]! - 0.5) && (stops[j] === end || middle(one) <= stops[j]! - 0.5)),
  });
  const wide = page.room.width - besideSteel(page, [deckHeight + 48]) - RIGHT * page.kit.h;
  const fits = ({ from, to, pieces: own }: Chunk): boolean => (to - from) * LEAST_SCALE <= wide
    && [ABOVE, OPEN].every((kinds) => labelsOf(own, kinds).reduce((sum, { text }) => sum + bandWidth(page.kit, text), 0) <= page.room.width - 4 * page.kit.h);
  const chunks: Chunk[] = [];
  for (let i = 0; i < parts.length;) {
    let j = i + 1;
    while (j < parts.length && fits(within(i, j + 1))) j++;
    chunks.push(within(i, j));
    i = j;
  }
  return chunks;
}

/** One label for each mark in each bay, on the first piece that bears it. */
function labelsOf(pieces: readonly DeckPiece[], kinds: readonly CatwalkPart[]): BandLabel[] {
  const seen = new Set<string>();
  return pieces.flatMap((one): BandLabel[] => {
    const { piece, place } = one;
    const key = `${piece.mark} ${String(piece.bay)}`;
    if (!kinds.includes(place.part) || seen.has(key)) return [];
    seen.add(key);
    const { x, y } = target(one);
    return [{ text: piece.mark, x: inches(x), targets: [{ y: inches(y), piece: piece.key }] }];
  });
}

/** Where a piece's leader ends: apart from those of its neighbors. */
function target({ place: { part, roll, low, high } }: DeckPiece): Vec {
  const [x0, x1] = [Math.min(...roll.map(({ x }) => x)), Math.max(...roll.map(({ x }) => x))];
  const [y0, y1] = [Math.min(...roll.map(({ y }) => y)), Math.max(...roll.map(({ y }) => y))];
  const at = (share: number, y: number): Vec => ({ x: x0 + (x1 - x0) * share, y });
  switch (part) {
    case 'deck': return at(0.66, (y0 + y1) / 2);
    // Drawn by their inner edges.
    case 'bearer': return y0 < 1e-6 ? at(0.3, y1) : at(0.44, y0);
    case 'cross': return at(0.5, y0 + (y1 - y0) * 0.3);
    case 'bracket': return at(0.5, y0 + (y1 - y0) * 0.6);
    case 'toe': return at(0.7, (low + high) / 2);
    case 'top-rail': return at(0.36, (low + high) / 2);
    case 'mid-rail': return at(0.52, (low + high) / 2);
    case 'guard-post': return at(0.8, low + (high - low) * 0.36);
    case 'leg': return at(0.2, low + (high - low) * 0.4);
    case 'foot': return at(0.9, (low + high) / 2);
    case 'stringer': case 'tread': case 'step-post': case 'step-rail': throw new Error(`steps are not laid flat: ${part}`);
  }
}

function fromAbove(catwalk: Catwalk, chunk: Chunk, label: string, title: string): SideView {
  const { width } = catwalk.brief;
  const shapes = chunk.pieces.flatMap(({ piece, place: { part, roll } }): Shape[] => {
    const [a, b, c, d] = roll;
    if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
    switch (part) {
      case 'deck': return outline(PENS.outline, roll, piece.key);
      case 'bearer': return [a.y < 1e-6 ? line(PENS.hidden, d, c, piece.key) : line(PENS.hidden, a, b, piece.key)];
      case 'cross': case 'bracket': return [line(PENS.hidden, a, d, piece.key), line(PENS.hidden, b, c, piece.key)];
      default: return [];
    }
  });
  return {
    id: `above ${label}`, title, label, left: chunk.from, right: chunk.to, low: 0, high: width, shapes, labels: labelsOf(chunk.pieces, ABOVE), callouts: [],
    dimensions: () => [], widths: chunk.stops.slice(1).map((x) => x - chunk.from), heights: [width],
  };
}

function openSide(catwalk: Catwalk, chunk: Chunk, label: string, title: string): SideView {
  const { deckHeight, guarded, guardHeight } = catwalk;
  const build = deckBuild(deckHeight);
  const decks = chunk.pieces.filter(({ place }) => place.part === 'deck');
  const under = build.bearers ? build.bearerUnder : build.plateUnder;
  const shown = chunk.pieces.filter(({ place }) => OPEN.includes(place.part));
  const box = ({ place: { roll, low, high }, piece }: DeckPiece): Shape[] => {
    // The open edge: the two corners that lie farthest out.
    const xs = roll.map(({ x }) => x);
    const open = roll.slice(2).map(({ x }) => x);
    const [x0, x1] = piece.kind === 'bracket' || piece.kind === 'guard' ? [Math.min(...xs), Math.max(...xs)] : [Math.min(...open), Math.max(...open)];
    return rectangle(PENS.outline, x0, x1, low, high, piece.key);
  };
  const high = deckHeight + (guarded ? guardHeight : CATWALK_TOE);
  return {
    id: `open ${label}`, title, label, left: chunk.from, right: chunk.to, low: 0, high, labels: labelsOf(chunk.pieces, OPEN), callouts: [],
    shapes: [
      line(PENS.thin, { x: chunk.from - 4, y: 0 }, { x: chunk.to + 4, y: 0 }),
      ...decks.flatMap(({ place: { roll } }) => {
        const [c, d] = [roll[2]!, roll[3]!];
        return [...rectangle(PENS.thin, d.x, c.x, Math.max(0, under), deckHeight), ...(build.bearers ? [line(PENS.thin, { x: d.x, y: build.plateUnder }, { x: c.x, y: build.plateUnder })] : [])];
      }),
      ...shown.flatMap(box),
    ],
    dimensions: () => [],
    widths: [],
    heights: [deckHeight, deckHeight + CATWALK_TOE, ...(guarded ? [deckHeight + guardHeight / 2, deckHeight + guardHeight] : [])],
  };
}

/** Height of a toe board over the deck. */
const CATWALK_TOE = 4;
