/** A stretch of deck with its parts laid flat side by side: from above, and its open side. As many views as its marks ask for. */
import { inches } from '../../base/quantity.ts';
import { type Vec } from '../../base/points.ts';
import { bandWidth } from '../../drafting/band.ts';
import { PENS } from '../../drafting/kit.ts';
import { type BandLabel, type Shape } from '../../drafting/model.ts';
import { type Catwalk, type DeckStretch } from '../../layout/index.ts';
import { deckBuild, type CatwalkPart, type DeckBuild } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { stacked, type Block } from '../flow.ts';
import { besideSteel, frontBlock, type FrontView, RIGHT } from '../front-view.ts';
import { type Page } from '../input.ts';
import { line, outline, rectangle } from '../ramps/shapes.ts';
import { type Scale, scalesOf } from '../scales.ts';
import { type DeckPiece } from './shapes.ts';

const ABOVE: readonly CatwalkPart[] = ['deck', 'foot-cleat', 'bearer', 'cross', 'bracket'];
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
    return stacked(views.map((view) => frontBlock(page, { ...view, id: `${view.id} ${stretch.run} ${String(i)}` }, scale)));
  });
}

/** The largest scale at which all views of a chunk stand one over the other. */
function scaleOf(page: Page, views: readonly FrontView[]): Scale {
  const list = scalesOf(page.block.units);
  const wide = page.room.width - besideSteel(page, views.flatMap(({ heights }) => heights)) - RIGHT * page.kit.h;
  const fits = (scale: Scale): boolean => scale.scale <= 1 / 8
    && views.every((view) => (view.right - view.left) * scale.scale <= wide)
    && stacked(views.map((view) => frontBlock(page, view, scale))).height <= page.room.height;
  return list.find(fits) ?? list[list.length - 1]!;
}

/** Cuts the stretch so that every view has room for its marks and its length. */
function chunksOf(page: Page, { highest }: Catwalk, { parts }: DeckStretch, pieces: readonly DeckPiece[]): Chunk[] {
  const stops = [0];
  for (const { near, far, slope } of parts) stops.push(stops[stops.length - 1]! + Math.max(near, far) * Math.cos(slope));
  const end = stops[stops.length - 1]!;
  const middle = ({ place: { roll } }: DeckPiece): number => (Math.min(...roll.map(({ x }) => x)) + Math.max(...roll.map(({ x }) => x))) / 2;
  const within = (i: number, j: number): Chunk => ({
    from: stops[i]!, to: stops[j]!, stops: stops.slice(i, j + 1),
    pieces: pieces.filter((one) => (i === 0 || middle(one) > stops[i]! - 0.5) && (stops[j] === end || middle(one) <= stops[j]! - 0.5)),
  });
  const wide = page.room.width - besideSteel(page, [highest + 48]) - RIGHT * page.kit.h;
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
function target({ place: { part, roll, low, high, leaning } }: DeckPiece): Vec {
  const [x0, x1] = [Math.min(...roll.map(({ x }) => x)), Math.max(...roll.map(({ x }) => x))];
  const [y0, y1] = [Math.min(...roll.map(({ y }) => y)), Math.max(...roll.map(({ y }) => y))];
  const at = (share: number, y: number): Vec => ({ x: x0 + (x1 - x0) * share, y });
  // A share of the way along and up, in the open side; on a slope within the outline there.
  const side = (share: number, up: number): Vec => {
    const [a, b, c, d] = leaning ?? [{ x: x0, y: low }, { x: x1, y: low }, { x: x1, y: high }, { x: x0, y: high }];
    const between = (from: number, to: number, by: number): number => from + (to - from) * by;
    return { x: between(a!.x, b!.x, share), y: between(between(a!.y, b!.y, share), between(d!.y, c!.y, share), up) };
  };
  switch (part) {
    case 'deck': return at(0.66, (y0 + y1) / 2);
    case 'foot-cleat': return at(0.5, y0 + (y1 - y0) * 0.78);
    // Drawn by their inner edges.
    case 'bearer': return y0 < 1e-6 ? at(0.3, y1) : at(0.44, y0);
    case 'cross': return at(0.5, y0 + (y1 - y0) * 0.3);
    case 'bracket': return at(0.5, y0 + (y1 - y0) * 0.6);
    case 'toe': return side(0.7, 0.5);
    case 'top-rail': return side(0.36, 0.5);
    case 'mid-rail': return side(0.52, 0.5);
    case 'guard-post': return side(0.8, 0.36);
    case 'leg': return at(0.2, low + (high - low) * 0.4);
    case 'foot': return at(0.9, (low + high) / 2);
    case 'stringer': case 'tread': case 'step-post': case 'step-rail': throw new Error(`steps are not laid flat: ${part}`);
  }
}

function fromAbove(catwalk: Catwalk, chunk: Chunk, label: string, title: string): FrontView {
  const { width } = catwalk.brief;
  const shapes = chunk.pieces.flatMap(({ piece, place: { part, roll } }): Shape[] => {
    const [a, b, c, d] = roll;
    if (a === undefined || b === undefined || c === undefined || d === undefined) return [];
    switch (part) {
      case 'deck': return outline(PENS.outline, roll, piece.key);
      case 'foot-cleat': return outline(PENS.thin, roll, piece.key);
      case 'bearer': return [a.y < 1e-6 ? line(PENS.hidden, d, c, piece.key) : line(PENS.hidden, a, b, piece.key)];
      case 'cross': case 'bracket': return [line(PENS.hidden, a, d, piece.key), line(PENS.hidden, b, c, piece.key)];
      default: return [];
    }
  });
  return {
    id: `above ${label}`, title, label, left: chunk.from, right: chunk.to, low: 0, high: width, shapes, labels: labelsOf(chunk.pieces, ABOVE), callouts: [],
    dimensions: () => [], datum: chunk.from, widths: chunk.stops.slice(1), heights: [width],
  };
}

function openSide(catwalk: Catwalk, chunk: Chunk, label: string, title: string): FrontView {
  const { guarded, guardHeight, slope } = catwalk;
  const decks = chunk.pieces.filter(({ place }) => place.part === 'deck');
  const shown = chunk.pieces.filter(({ place }) => OPEN.includes(place.part));
  const box = ({ place: { roll, low, high, leaning }, piece }: DeckPiece): Shape[] => {
    if (leaning !== null) return outline(PENS.outline, leaning, piece.key);
    // The open edge: the two corners that lie farthest out.
    const xs = roll.map(({ x }) => x);
    const open = roll.slice(2).map(({ x }) => x);
    const [x0, x1] = piece.kind === 'bracket' || piece.kind === 'guard' ? [Math.min(...xs), Math.max(...xs)] : [Math.min(...open), Math.max(...open)];
    return rectangle(PENS.outline, x0, x1, low, high, piece.key);
  };
  // On a slope each stands at another height.
  const brackets = slope === 0 ? [] : chunk.pieces.filter(({ place }) => place.part === 'bracket').flatMap(({ place: { roll, low, high } }) => {
    const xs = roll.map(({ x }) => x);
    return rectangle(PENS.hidden, Math.max(chunk.from, Math.min(...xs)), Math.min(chunk.to, Math.max(...xs)), low, high);
  });
  const tops = decks.flatMap(({ place: { high, leaning } }) => (leaning === null ? [high] : [leaning[3]!.y, leaning[2]!.y]));
  const [lowest, highest] = [Math.min(...tops), Math.max(...tops)];
  const over = [CATWALK_TOE, ...(guarded ? [guardHeight / 2, guardHeight] : [])];
  return {
    id: `open ${label}`, title, label, left: chunk.from, right: chunk.to, low: 0, high: highest + over[over.length - 1]!, labels: labelsOf(chunk.pieces, OPEN), callouts: [],
    shapes: [line(PENS.thin, { x: chunk.from - 4, y: 0 }, { x: chunk.to + 4, y: 0 }), ...decks.flatMap((deck) => deckSide(deck, deckBuild(catwalk.lowest, slope).bearers)), ...brackets, ...shown.flatMap(box)],
    dimensions: () => [],
    datum: chunk.from,
    // Along the open edge: where the guard's posts and the legs stand, to their middles.
    widths: shown.filter(({ place: { part } }) => part === 'guard-post' || part === 'leg').map(({ place: { roll } }) => mean(roll)),
    // On a slope every joint's, and what stands over the highest.
    heights: [...tops, ...(highest - lowest > 1e-6 ? [] : over.map((by) => highest + by))],
  };
}

/** Plate and bearers of a part from the open side. */
function deckSide({ place: { roll, high, leaning } }: DeckPiece, bearers: boolean): Shape[] {
  const [x0, x1] = [roll[3]!.x, roll[2]!.x];
  const [y0, y1] = leaning === null ? [high, high] : [leaning[3]!.y, leaning[2]!.y];
  const slope = Math.atan2(y1 - y0, x1 - x0);
  const build = (height: number): DeckBuild => deckBuild(height, slope);
  const under = ({ bearerUnder, plateUnder }: DeckBuild): number => Math.max(0, bearers ? bearerUnder : plateUnder);
  const plate = bearers ? [line(PENS.thin, { x: x0, y: build(y0).plateUnder }, { x: x1, y: build(y1).plateUnder })] : [];
  return [...outline(PENS.thin, [{ x: x0, y: under(build(y0)) }, { x: x1, y: under(build(y1)) }, { x: x1, y: y1 }, { x: x0, y: y0 }]), ...plate];
}

const mean = (points: readonly Vec[]): number => points.reduce((sum, { x }) => sum + x, 0) / points.length;

/** Height of a toe board over the deck. */
const CATWALK_TOE = 4;
