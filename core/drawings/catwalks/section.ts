/** A deck seen from one of its ends: fence, deck, bracket, toe board and guard, with every height. */
import { inches } from '../../base/quantity.ts';
import { viewPoint } from '../../base/points.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { PENS } from '../../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Shape } from '../../drafting/model.ts';
import { type Catwalk, type DeckEnd, type DeckStretch, type Fence } from '../../layout/index.ts';
import { bracketSize, deckBuild } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { boundsOf } from '../bounds.ts';
import { type Detail } from '../detail.ts';
import { line, outline, rectangle } from '../ramps/shapes.ts';
import { type DeckPiece } from './shapes.ts';

const { bearer, bracket, toeBoard, guard, leg } = CATWALK_PRACTICE;

interface Seen {
  readonly catwalk: Catwalk;
  readonly stretch: DeckStretch;
  readonly fence: Fence;
  readonly end: DeckEnd;
  readonly pieces: readonly DeckPiece[];
  readonly mark: string;
}
/** A section with the deck's height over the ground there, that of the line which its fence follows, and its slope. */
interface SeenAt extends Seen {
  readonly deck: number;
  readonly base: number;
  readonly slope: number;
}

export function endSection(given: Seen): Detail {
  const { catwalk, fence, end, mark, stretch } = given;
  const part = end === 'start' ? stretch.parts[0]! : stretch.parts[stretch.parts.length - 1]!;
  const deck = part.heights[end === 'start' ? 0 : 1];
  const seen: SeenAt = { ...given, deck, base: deck - catwalk.deckHeight, slope: part.slope };
  const { width } = catwalk.brief;
  const inner = fence.section.k + fence.section.D / 2;
  const outer = inner + width;
  const top = Math.max(seen.base + fence.brief.height, deck + (catwalk.guarded ? catwalk.guardHeight : toeBoard.height));
  return {
    id: `section ${mark} ${end}`,
    title: say(`drawings.catwalk.section.${end}`, { mark, run: seen.stretch.run, side: say(`drawings.side.${seen.stretch.side}`) }),
    bounds: boundsOf([{ x: -2, y: 0 }, { x: outer + 2, y: top }]),
    shapes: [...fenceShapes(fence, seen.base), line(PENS.thin, { x: -8, y: 0 }, { x: outer + 10, y: 0 }), ...deckShapes(seen, inner), ...endShapes(seen, inner)],
    dimensions: (h) => dimensionsOf(seen, inner, h),
    callouts: calloutsOf(seen, inner),
  };
}

/** `base`: the floor of the cattle over the ground, which is drawn where the two differ. */
function fenceShapes({ section, brief }: Fence, base: number): Shape[] {
  const { k, D, t, kr, d, railHeight, rows } = section;
  const solid = brief.sheet !== null && brief.solidTo > brief.solidFrom;
  return [
    ...rectangle(PENS.outline, k - D / 2, k + D / 2, 0, base + brief.height),
    ...(base > 1e-6 ? [line(PENS.thin, { x: -8, y: base }, { x: 0, y: base })] : []),
    ...(solid ? rectangle(PENS.thin, 0, t, base + brief.solidFrom, base + brief.solidTo) : []),
    ...rows.map((row) => base + row).flatMap((row): Shape[] => (brief.rail.shape === 'round'
      ? [{ kind: 'circle', pen: PENS.thin, center: viewPoint(kr, row), radius: inches(d / 2) }]
      : rectangle(PENS.thin, kr - d / 2, kr + d / 2, row - railHeight / 2, row + railHeight / 2))),
  ];
}

/** Plate, bearers and what carries them; of a part that stands behind the end. */
function deckShapes({ catwalk: { brief: { width } }, stretch, deck: deckHeight, slope }: SeenAt, inner: number): Shape[] {
  const build = deckBuild(deckHeight, slope);
  const reach = stretch.posts[0]?.reach;
  const plate = rectangle(PENS.outline, inner, inner + width, Math.max(0, build.plateUnder), deckHeight);
  if (deckHeight < 1e-6) return plate.slice(2, 3);
  if (!build.bearers) return plate;
  const bars = [inner, inner + width - bearer.size].flatMap((x) => rectangle(PENS.thin, x, x + bearer.size, build.bearerUnder, build.plateUnder));
  if (!build.brackets || reach === undefined) return [...plate, ...bars];
  const { depth, leg: legged } = bracketSize(reach, build);
  const at = build.bearerUnder;
  const r = gateSection(leg.section).across / 2;
  return [
    ...plate, ...bars,
    ...outline(PENS.thin, [{ x: inner, y: at - depth }, { x: inner + reach, y: at - bracket.tip }, { x: inner + reach, y: at }, { x: inner, y: at }]),
    ...(legged ? rectangle(PENS.thin, inner + reach - 2 * r, inner + reach, 0, at - bracket.tip) : []),
  ];
}

/** What stands across the end, and the side rails behind it. */
function endShapes({ catwalk, end, pieces, deck }: SeenAt, inner: number): Shape[] {
  const { width } = catwalk.brief;
  const open = catwalk.flights.some((flight) => flight.at === end && flight.inLine);
  const across = pieces.filter(({ place }) => place.end === end);
  // An end from which steps go on shows what runs along its side from the end.
  const rail = (over: number, section: string): Shape =>
    ({ kind: 'circle', pen: PENS.thin, center: viewPoint(inner + width - guard.inset, deck + over), radius: inches(gateSection(section).across / 2) });
  const side = !open ? [] : [
    ...rectangle(PENS.thin, inner + width - toeBoard.thickness, inner + width, deck, deck + toeBoard.height),
    ...(catwalk.guarded ? [rail(catwalk.guardHeight - gateSection(guard.top).across / 2, guard.top), rail(catwalk.guardHeight / 2, guard.mid)] : []),
  ];
  return [...side, ...across.flatMap(({ piece, place: { part, low, high, roll } }): Shape[] => {
    const ys = roll.map(({ y }) => y);
    const [y0, y1] = [Math.min(...ys), Math.max(...ys)];
    switch (part) {
      case 'toe': return rectangle(PENS.outline, inner, inner + width, low, high, piece.key);
      case 'top-rail': case 'mid-rail': case 'guard-post': return rectangle(PENS.outline, inner + y0, inner + y1, low, high, piece.key);
      default: return [];
    }
  })];
}

function dimensionsOf({ catwalk, fence, deck: deckHeight, base }: SeenAt, inner: number, h: number): DimensionSpec[] {
  const { guarded, guardHeight, brief: { width } } = catwalk;
  const outer = inner + width;
  const out = (list: readonly number[]): number[] => list.map((by) => by * h);
  const left = out([4, 6, 8, 10, 12, 14]);
  const right = out([-4, -6, -8, -10, -12, -14]);
  const upright = (x0: number, y0: number, x1: number, y1: number, offsets: readonly number[]): DimensionSpec =>
    ({ measure: 'linear', along: 'y', required: true, from: viewPoint(x0, y0), to: viewPoint(x1, y1), offsets });
  return [
    ...(deckHeight > 1e-6 ? [upright(outer, 0, outer, deckHeight, right)] : []),
    ...(base + fence.brief.height - deckHeight > 1e-6 ? [upright(0, deckHeight, 0, base + fence.brief.height, left)] : []),
    ...(base > 1e-6 ? [upright(-8, 0, -8, base, left)] : []),
    // Told again beside the open side and in the table.
    ...(deckHeight > 1e-6 ? [{ ...upright(outer, deckHeight, outer, deckHeight + toeBoard.height, right), required: false }] : []),
    ...(guarded ? [upright(outer, deckHeight, outer - guard.inset, deckHeight + guardHeight, out([-7, -9, -11, -13, -15]))] : []),
    { measure: 'linear', along: 'x', required: true, from: viewPoint(inner, deckHeight), to: viewPoint(outer, deckHeight), offsets: out([8, 11, 14, 17, 5, -8]) },
    { measure: 'linear', along: 'x', required: true, decimal: true, from: viewPoint(0, 0), to: viewPoint(inner, 0), offsets: out([-3, -5, -7]) },
  ];
}

function calloutsOf({ pieces, end, fence, deck, base, slope }: SeenAt, inner: number): CalloutSpec[] {
  const seen = new Set<string>();
  const marks = pieces.filter(({ place }) => place.end === end).flatMap(({ piece, place }): CalloutSpec[] => {
    if (seen.has(piece.mark)) return [];
    seen.add(piece.mark);
    const ys = place.roll.map(({ y }) => y);
    const y = (place.low + place.high) / 2;
    const x = inner + Math.min(...ys) + (Math.max(...ys) - Math.min(...ys)) * (place.part === 'guard-post' ? 0.5 : 0.62);
    return [{ text: piece.mark, target: viewPoint(x, place.part === 'guard-post' ? place.low + (place.high - place.low) * 0.75 : y), piece: piece.key, toward: { x: 0.7, y: 0.7 }, layer: 'MARKS' }];
  });
  const build = deckBuild(deck, slope);
  return [
    ...marks,
    { text: say('drawings.section.cattle'), target: viewPoint(0, base + fence.brief.height * 0.55), piece: null, toward: { x: -1, y: 0.2 }, layer: 'NOTES', optional: true },
    ...(build.brackets ? [{ text: say('drawings.catwalk.bracket'), target: viewPoint(inner + 2, build.bearerUnder - 1.5), piece: null, toward: { x: 0.4, y: -1 }, layer: 'NOTES' as const, optional: true }] : []),
  ];
}
