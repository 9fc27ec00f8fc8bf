/** Catwalks: one outcome or more for each that stands, in the order of the brief. Heights and lengths in inches. */
import { MM_PER_INCH, toDegrees } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { otherSide } from '../../brief/types.ts';
import { lengthAtOffset, type Catwalk, type Fence } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type CatwalkPart, type CatwalkPlace, type Piece } from '../../parts/index.ts';
import { type Context } from '../context.ts';
import { judged, none, unset, type Judge, type Outcome } from '../outcome.ts';
import { least, limitText, meets, most, near, range, type Limit } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { railLoad } from '../strength/rail-load.ts';
import { printed, printedAngle, printedSmall } from '../words/print.ts';

type Figures = Exclude<Limit, { is: 'words' }>;

/** The outcomes of every catwalk. */
const each = (outcomesOf: (context: Context, catwalk: Catwalk) => readonly Outcome[]): Judge => (context) => {
  const found = context.layout.catwalks.flatMap((catwalk) => outcomesOf(context, catwalk));
  return found.length > 0 ? found : none();
};

const placeOf = ({ stretches }: Catwalk): Outcome['at'] => stretches[0]!.parts[0]!.corners[3];

const measure = (limit: Figures, value: number, where: string, catwalk: Catwalk): Outcome =>
  ({ ...judged(meets(limit, value), value, where, placeOf(catwalk)), limit: limitText(limit) });

const railOf = ({ fenceHeight, deckHeight }: Catwalk): number => fenceHeight - deckHeight;

export const fencesBeside = ({ layout }: Context, { stretches }: Catwalk): readonly Fence[] =>
  stretches.flatMap(({ run, side }) => layout.fences.filter((fence) => fence.run === run && fence.side === side));

const piecesOf = ({ parts }: Context, { path }: Catwalk, part: CatwalkPart): readonly Piece[] =>
  parts.pieces.filter(({ place }) => place.kind === 'catwalk' && place.catwalk === path && place.part === part);

/** The deck over the ground, beside a ramp over what its fence follows, and the rail over the deck. */
function railWords(brief: Context['brief'], catwalk: Catwalk): string {
  const named = { catwalk: catwalk.path, deck: printed(brief, catwalk.deckHeight), rail: printed(brief, railOf(catwalk)) };
  if (catwalk.highest - catwalk.deckHeight < SAME_LENGTH) return say('where.catwalkRail', named);
  return say('where.rampCatwalkRail', { ...named, run: catwalk.brief.run, low: printed(brief, catwalk.lowest), high: printed(brief, catwalk.highest) });
}

/** Of the United States, and where no jurisdiction was given; another's figures are its own rule's. */
export const railHeight = each(({ brief }, catwalk) => {
  const { of, by } = rules['rail-height'].limit.values;
  const height = railOf(catwalk);
  const where = railWords(brief, catwalk);
  const other = brief.site.jurisdiction !== null && brief.site.jurisdiction !== 'us';
  if (other) return [judged(true, height, say('where.catwalkRailElsewhere', { where }), placeOf(catwalk))];
  return [judged(meets(near(by, of), height), height, where, placeOf(catwalk))];
});

/** Millimeters, as the other jurisdictions write theirs. */
export const railOtherJurisdiction: Judge = (context) => {
  const { jurisdiction } = context.brief.site;
  if (context.layout.catwalks.length === 0 || jurisdiction === 'us') return none();
  if (jurisdiction === null) return unset(['site.jurisdiction']);
  const { eu, uk, ontarioLow, ontarioHigh } = rules['rail-other-jurisdiction'].limit.values;
  const limits = { eu: least(eu), uk: least(uk), ontario: range(ontarioLow, ontarioHigh) };
  return each(({ brief }, catwalk) => {
    const height = railOf(catwalk) * MM_PER_INCH;
    return [measure(limits[jurisdiction], height, railWords(brief, catwalk), catwalk)];
  })(context);
};

/** How much of the crowd pen's fence may go without a deck, at each end and between two: a step's width. */
const OPEN_PEN = CATWALK_PRACTICE.steps.width;

/** Decks along the pen's outer fence from one end to the other. */
export const crowdCatwalk: Judge = ({ brief, layout }) => {
  if (layout.catwalks.length === 0) return [judged(false, null, say('where.noCatwalk'), layout.pivot)];
  const outer = otherSide(brief.crowdPen.hand);
  const fence = layout.fences.find(({ run }) => run === 'crowd-pen');
  if (fence === undefined) throw new Error('a crowd pen without its outer fence');
  const decks = layout.catwalks.filter(({ side }) => side === outer).flatMap(({ stretches }) => stretches.filter(({ run }) => run === 'crowd-pen')).toSorted((a, b) => a.from - b.from);
  let reached = 0;
  let open = 0;
  for (const { from, to } of [...decks, { from: fence.length, to: fence.length }]) {
    open = Math.max(open, from - reached);
    reached = Math.max(reached, to);
  }
  const covered = printed(brief, decks.reduce((sum, { from, to }) => sum + to - from, 0));
  return [judged(open <= OPEN_PEN + SAME_LENGTH, null, say('where.crowdCatwalk', { covered, length: printed(brief, fence.length) }), layout.pivot)];
};

/** Every open edge of a deck so high has its top rail; measured: the height of its highest place over the ground, which is taken as level. */
export const deckGuards = each((context, catwalk) => {
  const height = catwalk.highest;
  const named = { catwalk: catwalk.path, height: printed(context.brief, height) };
  const rails = piecesOf(context, catwalk, 'top-rail');
  if (!meets(rules['catwalk-guard'].limit, height) && rails.length === 0) return [judged(true, height, say('where.deckLow', named), placeOf(catwalk))];
  const edges = catwalk.stretches.reduce((sum, { parts }) => sum + parts.filter(({ landing }) => landing === null).length, 0) + 2 - catwalk.flights.filter(({ inLine }) => inLine).length;
  return [judged(rails.length >= edges, height, say('where.deckGuard', { ...named, rails: rails.length, edges, guard: printed(context.brief, catwalk.guardHeight) }), placeOf(catwalk))];
});

/** Greatest opening between rails that stand for a midrail, inches (29 CFR 1910.29(b)(2)(iv), from memory). */
const MOST_OPENING = 19;

/**
 * The rail nearest to half of the rail's height, as a share of it: on the fence, then on the guard. A fence whose rails leave no
 * opening over 19 in, or whose skin reaches half way, has one too.
 */
export const midrail = each((context, catwalk) => {
  const { deckHeight } = catwalk;
  const rail = railOf(catwalk);
  const fence = fencesBeside(context, catwalk)[0]!;
  const { rows, railHeight: thick } = fence.section;
  const skin = skinTop(fence);
  const shares = rows.map((row) => (row - deckHeight) / rail);
  const nearest = shares.reduce((best, share) => (Math.abs(share - 0.5) < Math.abs(best - 0.5) ? share : best), Infinity);
  const edges = [Math.max(deckHeight, skin), ...rows.filter((row) => row > Math.max(deckHeight, skin)).flatMap((row) => [row - thick / 2, row + thick / 2])];
  const opening = Math.max(0, ...edges.flatMap((edge, i) => (i % 2 === 0 && i + 1 < edges.length ? [edges[i + 1]! - edge] : [])));
  const met = rail > SAME_LENGTH && (opening <= MOST_OPENING + SAME_LENGTH || skin - deckHeight >= rail / 2 - SAME_LENGTH);
  const named = { catwalk: catwalk.path, opening: printedSmall(context.brief, opening), most: printedSmall(context.brief, MOST_OPENING) };
  const outcomes: Outcome[] = [judged(met, Number.isFinite(nearest) ? nearest : null, say('where.fenceMidrail', named), placeOf(catwalk))];
  if (!catwalk.guarded) return outcomes;
  const mids = piecesOf(context, catwalk, 'mid-rail').map(({ place }) => (place.kind === 'catwalk' ? middleOver(place) : NaN) / catwalk.guardHeight);
  const lowest = mids.length === 0 ? null : Math.min(...mids);
  return [...outcomes, judged(lowest !== null && Math.abs(lowest - 0.5) < SAME_LENGTH, lowest, say('where.guardMidrail', { catwalk: catwalk.path }), placeOf(catwalk))];
});

/** Of a piece's middle over the deck, plumb. */
function middleOver({ over, low, high, leaning }: CatwalkPlace): number {
  const [a, , , d] = leaning ?? [];
  return over + (a === undefined || d === undefined ? high - low : d.y - a.y) / 2;
}

/** Height, then the gap under it, of the lowest board; a deck on the ground needs none. */
export const toeBoards = each((context, catwalk) => {
  const boards = piecesOf(context, catwalk, 'toe');
  const { least: tall, most: gap } = rules['toe-board'].limit.values;
  const named = { catwalk: catwalk.path };
  if (catwalk.highest < SAME_LENGTH) return [judged(true, null, say('where.deckOnGround', named), placeOf(catwalk))];
  const height = boards.length === 0 ? 0 : Math.min(...boards.map(({ flatHeight }) => flatHeight ?? 0));
  const under = boards.length === 0 ? 0 : Math.max(...boards.map(({ place }) => (place.kind === 'catwalk' ? place.over : NaN)));
  return [
    measure(least(tall), height, say('where.toeBoard', named), catwalk),
    measure(most(gap), under, say('where.toeGap', named), catwalk),
  ];
});

/** Stress and height kept of the fence's top rail, then of the guard's, over the longest of their spans beside the deck. */
export const railLoads = each((context, catwalk) => {
  const { most: ratio, least: kept } = rules['rail-load'].limit.values;
  const spans = fencesBeside(context, catwalk).map((fence) => ({ section: fence.brief.rail, span: longestBay(fence, catwalk) }));
  const fence = spans.map(({ section, span }) => ({ ...railLoad(section, span), span })).reduce((worst, one) => (one.stress > worst.stress ? one : worst));
  const tell = (which: 'where.fenceRailLoad' | 'where.guardRailLoad', { stress, sag, span }: typeof fence, height: number): Outcome[] => {
    const named = { catwalk: catwalk.path, span: printed(context.brief, span), sag: printedSmall(context.brief, sag) };
    return [measure(most(ratio), stress, say(which, named), catwalk), measure(least(kept), height - sag, say('where.railKept', named), catwalk)];
  };
  const outcomes = tell('where.fenceRailLoad', fence, railOf(catwalk));
  if (!catwalk.guarded) return outcomes;
  const span = Math.max(0, ...piecesOf(context, catwalk, 'top-rail').map(({ length }) => length));
  return [...outcomes, ...tell('where.guardRailLoad', { ...railLoad(gateSection(CATWALK_PRACTICE.guard.top), span), span }, catwalk.guardHeight)];
});

/** Of the bays beside the deck, along the rail's axis. */
function longestBay(fence: Fence, { stretches }: Catwalk): number {
  const beside = stretches.filter(({ run }) => run === fence.run);
  const bays = fence.spans.flatMap(({ posts }) => posts.slice(1).map((to, i) => [posts[i]!, to] as const))
    .filter(([from, to]) => beside.some((stretch) => from < stretch.to && to > stretch.from));
  const parts = beside.flatMap((stretch) => stretch.parts);
  const slope = (from: number, to: number): number => parts.find((part) => part.from < to && part.to > from)?.slope ?? 0;
  return Math.max(0, ...bays.map(([from, to]) => lengthAtOffset(fence, from, to, fence.section.kr) / Math.cos(slope(from, to))));
}

const skinTop = ({ brief }: Fence): number => (brief.sheet !== null && brief.solidTo > brief.solidFrom ? brief.solidTo : 0);

/** The least of the fences beside it; one without a skin counts from the ground. */
export const catwalkSkin = each((context, catwalk) => {
  const over = Math.min(...fencesBeside(context, catwalk).map(skinTop)) - catwalk.deckHeight;
  return [judged(meets(rules['catwalk-skin'].limit, over), over, say('where.catwalkSkin', { catwalk: catwalk.path, over: printedSmall(context.brief, over) }), placeOf(catwalk))];
});

export const catwalkWidth = each(({ brief }, catwalk) => {
  const { width } = catwalk.brief;
  return [judged(meets(rules['catwalk-width'].limit, width), width, say('where.catwalkWidth', { catwalk: catwalk.path, width: printedSmall(brief, width) }), placeOf(catwalk))];
});

/**
 * Riser, tread and angle of its steps, once where both flights are alike. A deck within one riser of the ground has only the riser. A deck
 * that slopes with a ramp, last: its own slope, with the figure of sloping walks.
 */
export const stairRise = each((context, catwalk) => {
  const { brief } = context;
  const { flights, slope } = catwalk;
  if (flights.length === 0) return [judged(true, null, say('where.deckOnGround', { catwalk: catwalk.path }), placeOf(catwalk))];
  const apart = flights.filter(({ height }, i) => i === 0 || Math.abs(height - flights[0]!.height) > SAME_LENGTH);
  const { steepest } = CATWALK_PRACTICE.cleat;
  const named = { catwalk: catwalk.path, slope: printedAngle(slope), cleats: piecesOf(context, catwalk, 'foot-cleat').length };
  return [
    ...apart.flatMap((flight) => flightOutcomes(brief, catwalk, flight)),
    ...(slope === 0 ? [] : [measure(most(steepest), toDegrees(slope), say('where.deckSlope', named), catwalk)]),
  ];
});

function flightOutcomes(brief: Context['brief'], catwalk: Catwalk, { risers, riser, tread, angle }: Catwalk['flights'][number]): readonly Outcome[] {
  const { riser: highest, tread: shallowest, low, high } = rules['stair-rise'].limit.values;
  const named = { catwalk: catwalk.path, risers, riser: printedSmall(brief, riser), tread: printedSmall(brief, tread), angle: printedAngle(angle) };
  const first = measure(most(highest), riser, say('where.stepRiser', named), catwalk);
  if (risers < 2) return [first];
  return [first, measure(least(shallowest), tread, say('where.stepTread', named), catwalk), measure(range(low, high), toDegrees(angle), say('where.stepAngle', named), catwalk)];
}
