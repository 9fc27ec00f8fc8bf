import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { DEFAULTS } from '../../brief/defaults.ts';
import { type Brief, type Fault } from '../../brief/types.ts';
import { printLength } from '../../units/index.ts';
import { facePoint } from '../fence-points.ts';
import { type Fence } from '../types.ts';
import { backOffset, backRadius, deckPoint, reachAside } from './deck-shape.ts';
import { divideDeck } from './divide-deck.ts';
import { stepFlight } from './flight.ts';
import { type CatwalkSpot } from './spots.ts';
import { type Catwalk, type DeckEnd, type DeckJoint, type DeckPart, type DeckPost, type DeckStretch } from './types.ts';

/** A deck inside a curve keeps this much radius on its open side: less is no way to walk (common practice, no source). */
const LEAST_RADIUS = 24;

type Stood = { readonly catwalk: Catwalk } | { readonly fault: Fault };

/** Steps narrower than this are none (common practice, no source); 22 in is what they should be. */
const LEAST_STEPS = 12;

/** A catwalk with its deck, its posts and its steps; what the shop's sheets or the curve do not allow is a fault. */
export function standCatwalk(brief: Brief, { brief: own, stretches }: CatwalkSpot): Stood {
  const { width, path } = own;
  const { fence } = stretches[0]!;
  const print = (length: number): string => printLength(inches(length), brief.units, 'inches');
  const deckHeight = own.deckHeight ?? inches(Math.max(0, fence.brief.height - DEFAULTS.railHeight));
  if (deckHeight > fence.brief.height + SAME_LENGTH) {
    return { fault: { path: `${path}.deckHeight`, code: 'fault.catwalk-above', params: { deck: print(deckHeight), height: print(fence.brief.height) } } };
  }
  const fits = edgeFits(brief, width);
  const made: DeckStretch[] = [];
  const landingsOn = landingStretches(stretches.map(({ from, to }) => to - from));
  for (const [i, stretch] of stretches.entries()) {
    const radius = backRadius(stretch.fence);
    if (stretch.fence.radiusSign < 0 && radius !== null && radius - width < LEAST_RADIUS) {
      const params = { width: print(width), run: stretch.fence.run, most: print(Math.max(0, radius - LEAST_RADIUS)) };
      return { fault: { path: `${path}.width`, code: 'fault.catwalk-radius', params } };
    }
    const ends = (['start', 'end'] as const).filter((end) => landingsOn[end] === i);
    const parts = divideDeck({ ...stretch, width, landings: deckHeight > SAME_LENGTH ? ends : [], fits });
    if (parts === null) return { fault: { path: `${path}.width`, code: 'fault.catwalk-sheet', params: { width: print(width) } } };
    made.push(stretchOf(stretch.fence, stretch.from, stretch.to, width, parts, i, stretches.length));
  }
  const landings = made.flatMap(({ run, parts }) => parts.flatMap((part) => (part.landing === null ? [] : [{ run, part, at: part.landing }])));
  const flights = landings.map(({ run, part, at }) => stepFlight(at, run, own.side, deckHeight, part));
  const narrow = flights.find((flight) => flight.risers > 1 && flight.width < LEAST_STEPS - SAME_LENGTH);
  if (narrow !== undefined) {
    return { fault: { path: `${path}.${own.to === null ? 'from' : 'to'}`, code: 'fault.catwalk-short', params: { width: print(narrow.width), least: print(LEAST_STEPS) } } };
  }
  const { from, height, heightEu } = CATWALK_PRACTICE.guard;
  const law = brief.site.jurisdiction ?? 'us';
  return {
    catwalk: {
      path, brief: own, side: own.side, deckHeight, fenceHeight: fence.brief.height,
      guarded: deckHeight > SAME_LENGTH && deckHeight >= from[law] - SAME_LENGTH,
      guardHeight: inches(law === 'eu' ? heightEu : height),
      stretches: made,
      flights,
    },
  };
}

/** The stretches that bear the landings: the first and the last that are long enough for one, else the longest. */
function landingStretches(lengths: readonly number[]): Readonly<Record<DeckEnd, number>> {
  const wide = CATWALK_PRACTICE.steps.width;
  const longest = lengths.indexOf(Math.max(...lengths));
  const [start, end] = [lengths.findIndex((length) => length >= wide), lengths.findLastIndex((length) => length >= wide)];
  return { start: start < 0 ? longest : start, end: end < 0 ? longest : end };
}

/** Whether a stock sheet holds a part of the deck, and a stock length its bars. */
function edgeFits(brief: Brief, width: number): (edge: number) => boolean {
  const { bearer, guard } = CATWALK_PRACTICE;
  const stock = Math.min(...[bearer.section, guard.top, guard.mid].map((name) => Math.max(...(brief.shop.stock[name] ?? [DEFAULTS.stockLength]))));
  const within = (long: number, a: number, b: number): boolean => long <= a + SAME_LENGTH && width <= b + SAME_LENGTH;
  return (edge) => edge <= stock + SAME_LENGTH && brief.shop.sheets.some(([a, b]) => within(edge, a, b) || within(edge, b, a));
}

/** `index` of `count` stretches: the post at a joint of two belongs to the later one, as the post's own bay does. */
function stretchOf(fence: Fence, from: Inches, to: Inches, width: number, parts: readonly DeckPart[], index: number, count: number): DeckStretch {
  const goesOn = index < count - 1;
  const posts = fence.spans.flatMap(({ posts: all, firstBay }) => all.map((u, i) => ({ u, bay: firstBay + i })))
    .filter(({ u }) => u >= from - SAME_LENGTH && u <= to + SAME_LENGTH && !(goesOn && u > fence.length - SAME_LENGTH))
    .map(({ u, bay }) => postOf(fence, u, bay, width, parts));
  const stops = [parts[0]!.from, ...parts.map((part) => part.to)];
  const joints = stops.flatMap((u, i): readonly DeckJoint[] => {
    const inner = i > 0 && i < parts.length;
    // Where one run follows another the later one tells of their joint, which has a post.
    if (!inner && (i === 0 ? index > 0 : goesOn)) return [];
    const near = inner ? SAME_LENGTH : CATWALK_PRACTICE.leg.offPost;
    if (posts.some((post) => Math.abs(post.u - u) <= near)) return [];
    const part = parts[Math.min(i, parts.length - 1)]!;
    const middle = (part.from + part.to) / 2;
    const at = (aside: number): DeckJoint['near'] => deckPoint(fence, middle, part.angle, u, aside);
    return [{ u, bay: part.bay, kind: inner ? 'between' : i === 0 ? 'start' : 'end', near: at(0), far: at(width) }];
  });
  return { run: fence.run, side: fence.side, from, to, backRadius: backRadius(fence), parts, posts, joints };
}

/** Of two parts that meet at the post, the one that reaches farther. */
function postOf(fence: Fence, u: Inches, bay: number, width: number, parts: readonly DeckPart[]): DeckPost {
  const beside = parts.filter((part) => u >= part.from - SAME_LENGTH && u <= part.to + SAME_LENGTH);
  const reach = Math.max(...beside.map((part) => reachAside(fence, (part.from + part.to) / 2, part.angle, u, width)));
  const back = backOffset(fence);
  return { u, bay, reach: inches(reach), back: facePoint(fence, u, back), tip: facePoint(fence, u, back + reach) };
}
