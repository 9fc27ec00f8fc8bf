import { inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { DEFAULTS } from '../../brief/defaults.ts';
import { type Brief, type Fault } from '../../brief/types.ts';
import { printLength } from '../../units/index.ts';
import { facePoint } from '../fence-points.ts';
import { type Fence, type Ramp } from '../types.ts';
import { backOffset, backRadius, deckPoint, reachAside } from './deck-shape.ts';
import { divideDeck } from './divide-deck.ts';
import { inLineFlight, LEAST_STEPS, stepFlight } from './flight.ts';
import { gradeOf, type Grade } from './grade.ts';
import { slopeFault } from './slope-faults.ts';
import { type CatwalkSpot } from './spots.ts';
import { type Catwalk, type DeckEnd, type DeckJoint, type DeckPart, type DeckPost, type DeckStretch, type StepFlight } from './types.ts';

/** A deck inside a curve keeps this much radius on its open side: less is no way to walk (common practice, no source). */
const LEAST_RADIUS = 24;

type Stood = { readonly catwalk: Catwalk } | { readonly fault: Fault };

/** A catwalk with its deck, its posts and its steps; what the shop's sheets, the curve or the ramp do not allow is a fault. */
export function standCatwalk(brief: Brief, { brief: own, stretches }: CatwalkSpot, ramps: readonly Ramp[]): Stood {
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
    const grade = gradeOf(ramps, stretch.fence.run);
    const sloped = slopeFault(brief, own, stretch, grade, deckHeight);
    if (sloped !== null) return { fault: sloped };
    const ends = (['start', 'end'] as const).filter((end) => landingsOn[end] === i && endSlope(grade, stretch, end) === 0);
    const onGround = deckHeight <= SAME_LENGTH && grade.ramp === null;
    const parts = divideDeck({ ...stretch, width, landings: onGround ? [] : ends, grade, deckHeight, fits });
    if (parts === null) return { fault: { path: `${path}.width`, code: 'fault.catwalk-sheet', params: { width: print(width) } } };
    made.push(stretchOf(stretch.fence, stretch.from, stretch.to, width, parts, { grade, deckHeight, index: i, count: stretches.length }));
  }
  const flights = flightsOf(made, own.side, ramps);
  const narrow = flights.find((flight) => !flight.inLine && flight.risers > 1 && flight.width < LEAST_STEPS - SAME_LENGTH);
  if (narrow !== undefined) {
    return { fault: { path: `${path}.${own.to === null ? 'from' : 'to'}`, code: 'fault.catwalk-short', params: { width: print(narrow.width), least: print(LEAST_STEPS) } } };
  }
  const { from, height, heightEu } = CATWALK_PRACTICE.guard;
  const law = brief.site.jurisdiction ?? 'us';
  const parts = made.flatMap((stretch) => stretch.parts);
  const heights = parts.flatMap((part) => part.heights);
  const highest = inches(Math.max(...heights));
  return {
    catwalk: {
      path, brief: own, side: own.side, deckHeight, fenceHeight: fence.brief.height,
      highest, lowest: inches(Math.min(...heights)), slope: radians(Math.max(...parts.map(({ slope }) => Math.abs(slope)))),
      // Whole, where its highest place asks for one: a rail that begins half way up a slope guards nobody (common practice, no source).
      guarded: highest > SAME_LENGTH && highest >= from[law] - SAME_LENGTH,
      guardHeight: inches(law === 'eu' ? heightEu : height),
      stretches: made,
      flights,
    },
  };
}

/** Slope at an end of a stretch. */
const endSlope = (grade: Grade, { from, to }: CatwalkSpot['stretches'][number], end: DeckEnd): Radians =>
  grade.slope(end === 'start' ? from + SAME_LENGTH : to - SAME_LENGTH);

/** From each landing, and in line from each end that lies on a slope. */
function flightsOf(stretches: readonly DeckStretch[], side: Catwalk['side'], ramps: readonly Ramp[]): readonly StepFlight[] {
  const [first, last] = [stretches[0]!, stretches[stretches.length - 1]!];
  const inLine = (at: DeckEnd, { run, parts }: DeckStretch): readonly StepFlight[] => {
    const part = at === 'start' ? parts[0]! : parts[parts.length - 1]!;
    return part.slope === 0 || ramps.every(({ name }) => name !== run) ? [] : [inLineFlight(at, run, side, part)];
  };
  const landed = stretches.flatMap(({ run, parts }) => parts.flatMap((part) => (part.landing === null ? [] : [stepFlight(part.landing, run, side, part)])));
  return [...inLine('start', first), ...landed, ...inLine('end', last)];
}

/** The stretches that bear the landings: the first and the last that are long enough for one, else the longest. */
function landingStretches(lengths: readonly number[]): Readonly<Record<DeckEnd, number>> {
  const wide = CATWALK_PRACTICE.steps.width;
  const longest = lengths.indexOf(Math.max(...lengths));
  const [start, end] = [lengths.findIndex((length) => length >= wide), lengths.findLastIndex((length) => length >= wide)];
  return { start: start < 0 ? longest : start, end: end < 0 ? longest : end };
}

/** Whether a stock sheet holds a part of the deck, and a stock length its bars. */
function edgeFits(brief: Brief, width: number): (edge: number, slope: Radians) => boolean {
  const { bearer, guard } = CATWALK_PRACTICE;
  const stock = Math.min(...[bearer.section, guard.top, guard.mid].map((name) => Math.max(...(brief.shop.stock[name] ?? [DEFAULTS.stockLength]))));
  const within = (long: number, a: number, b: number): boolean => long <= a + SAME_LENGTH && width <= b + SAME_LENGTH;
  // A bearer's plumb end on a slope reaches beyond the plate's.
  const beyond = CATWALK_PRACTICE.deck.thickness + CATWALK_PRACTICE.bearer.size;
  return (edge, slope) => edge + beyond * Math.tan(Math.abs(slope)) <= stock + SAME_LENGTH && brief.shop.sheets.some(([a, b]) => within(edge, a, b) || within(edge, b, a));
}

interface Lie {
  readonly grade: Grade;
  readonly deckHeight: number;
  readonly index: number;
  readonly count: number;
}

/** `index` of `count` stretches: the post at a joint of two belongs to the later one, as the post's own bay does. */
function stretchOf(fence: Fence, from: Inches, to: Inches, width: number, parts: readonly DeckPart[], { grade, deckHeight, index, count }: Lie): DeckStretch {
  const goesOn = index < count - 1;
  const height = (u: number): Inches => inches(grade.height(u) + deckHeight);
  const posts = fence.spans.flatMap(({ posts: all, firstBay }) => all.map((u, i) => ({ u, bay: firstBay + i })))
    .filter(({ u }, i, all) => u >= from - SAME_LENGTH && u <= to + SAME_LENGTH && !(goesOn && u > fence.length - SAME_LENGTH)
      // Two spans of a ramp's fence share the post where the slope breaks.
      && !(grade.breaks.length > 0 && i > 0 && u - all[i - 1]!.u < SAME_LENGTH))
    .map(({ u, bay }) => postOf(fence, u, bay, width, parts, height(u)));
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
    return [{ u, bay: part.bay, kind: inner ? 'between' : i === 0 ? 'start' : 'end', near: at(0), far: at(width), height: height(u), slope: part.slope }];
  });
  return { run: fence.run, side: fence.side, from, to, backRadius: backRadius(fence), parts, posts, joints };
}

/** Of two parts that meet at the post, the one that reaches farther and the steeper. */
function postOf(fence: Fence, u: Inches, bay: number, width: number, parts: readonly DeckPart[], height: Inches): DeckPost {
  const beside = parts.filter((part) => u >= part.from - SAME_LENGTH && u <= part.to + SAME_LENGTH);
  const reach = Math.max(...beside.map((part) => reachAside(fence, (part.from + part.to) / 2, part.angle, u, width)));
  const slope = beside.reduce<Radians>((most, part) => (Math.abs(part.slope) > Math.abs(most) ? part.slope : most), radians(0));
  const back = backOffset(fence);
  return { u, bay, reach: inches(reach), back: facePoint(fence, u, back), tip: facePoint(fence, u, back + reach), height, slope };
}
