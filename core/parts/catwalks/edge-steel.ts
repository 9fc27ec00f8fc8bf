/** What stands on a deck's open edges: toe boards, and where the drop asks for one a guard. */
import { straightPath } from '../../base/flat-shape.ts';
import { add, scale, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, radians, type Radians } from '../../base/quantity.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Catwalk } from '../../layout/index.ts';
import { type EndCut } from '../types.ts';
import { copeReach, slopeCopeReach } from '../saddle.ts';
import { type PartFrame, type Rise, type StretchFrame } from './frame.ts';
import { guardPosts } from './guard-posts.ts';
import { SQUARE, type Maker, type Seat, type Where } from './own.ts';

const { toeBoard, guard } = CATWALK_PRACTICE;
/** A midrail shorter than this is left out. */
const LEAST_RAIL = 1;

/** `first`, `last`: of the catwalk's stretches; the deck's two ends are open edges too, but one from which steps go on in line. */
export function edgeSteel(catwalk: Catwalk, frame: StretchFrame, first: boolean, last: boolean, make: Maker): void {
  const { width } = catwalk.brief;
  const { parts } = frame;
  parts.forEach((one, i) => {
    if (one.part.landing !== null) return;
    // A landing is open toward its steps: what runs along the edge ends beside it.
    const turns = [-1, 1].map((by, end) => (parts[i + by]?.part.landing === null ? one.turns[end]! : 0)) as [number, number];
    sideToe(catwalk, frame, one, turns, make);
    if (catwalk.guarded) sideRails(catwalk, frame, one, turns, make);
  });
  const closed = (at: 'start' | 'end'): boolean => !catwalk.flights.some((flight) => flight.at === at && flight.inLine);
  const ends = [
    ...(first && closed('start') ? [{ one: parts[0]!, share: 0 as const }] : []), ...(last && closed('end') ? [{ one: parts[parts.length - 1]!, share: 1 as const }] : []),
  ];
  for (const { one, share } of ends) {
    make.plate(whereOf(frame, one), 'toe-board', 'toe', toeBoard.plate, { long: width, high: toeBoard.height },
      { ...across(one, share, 0, width, toeBoard.thickness), ...one.band(toeBoard.gap, toeBoard.gap + toeBoard.height) });
    if (catwalk.guarded) endRails(catwalk, frame, one, share, make);
  }
  if (catwalk.guarded) guardPosts(catwalk, frame, first, last, make);
}

const whereOf = ({ stretch: { run, side } }: StretchFrame, { part: { bay } }: PartFrame): Where => ({ run, side, bay });

/** A strip across an end of a part, `thick` along it, inside it. */
function across(one: PartFrame, share: 0 | 1, from: number, to: number, thick: number): Pick<Seat, 'plan' | 'roll' | 'end'> {
  const inward = (of: (share: 0 | 1, aside: number) => Vec, aside: number): Vec => {
    const [end, other] = [of(share, aside), of(share === 0 ? 1 : 0, aside)];
    const total = Math.hypot(other.x - end.x, other.y - end.y);
    return add(end, scale(sub(other, end), thick / total));
  };
  const four = (of: (share: 0 | 1, aside: number) => Vec): readonly Vec[] => [of(share, from), inward(of, from), inward(of, to), of(share, to)];
  return { plan: four(one.at) as readonly PlanPoint[], roll: four(one.flat), end: share === 0 ? 'start' : 'end' };
}

/** Along the open edge; where the slope breaks its upper edge goes on to half of that turn, as its neighbor's does. */
function sideToe({ brief: { width } }: Catwalk, frame: StretchFrame, one: PartFrame, turns: readonly [number, number], make: Maker): void {
  const { height, gap, thickness, plate } = toeBoard;
  const [short, long] = [...turns].sort((a, b) => a - b).map((turn) => height * Math.tan(turn / 2));
  const more = short! + long!;
  const base = one.part.far;
  // The same board whichever of its ends leans more: it can be turned over.
  const corners = [{ x: short!, y: 0 }, { x: short! + base, y: 0 }, { x: base + more, y: height }, { x: 0, y: height }];
  make.plate(whereOf(frame, one), 'toe-board', 'toe', plate, {
    long: base + more, high: height, ...(more > 0 ? { area: (base + more / 2) * height, flat: { outer: straightPath(corners), holes: [] } } : {}),
  }, { ...one.strip(width - thickness, width), ...one.band(gap, gap + height / Math.cos(one.part.slope)) });
}

/** Heights of the two rails' axes over the deck, plumb. */
function railHeights({ guardHeight }: Catwalk): { readonly top: number; readonly mid: number } {
  return { top: guardHeight - gateSection(guard.top).across / 2, mid: guardHeight / 2 };
}

/** A top rail over the posts, mitred to its neighbors, and a midrail coped between the posts; both parallel to the deck. */
function sideRails(catwalk: Catwalk, frame: StretchFrame, one: PartFrame, turns: readonly [number, number], make: Maker): void {
  const { width } = catwalk.brief;
  const { slope, angle, mitre } = one.part;
  const line = width - guard.inset;
  const r = gateSection(guard.top).across / 2;
  const sides = [one.chord(line - r), one.chord(line + r)];
  const cut = (turn: number): EndCut => (angle > SAME_ANGLE ? { kind: 'mitre', angle: mitre } : turn > 0 ? { kind: 'slope-mitre', angle: radians(turn / 2) } : SQUARE);
  const heights = railHeights(catwalk);
  const where = whereOf(frame, one);
  make.bar(where, 'guard', 'top-rail', guard.top, { long: Math.max(...sides), ...(angle > SAME_ANGLE ? { short: Math.min(...sides) } : {}) }, [cut(turns[0]), cut(turns[1])],
    { ...one.strip(line - r, line + r), ...one.band(heights.top - r / Math.cos(slope), heights.top + r / Math.cos(slope)) });
  midRail(where, one.chord(line), slope, (half) => ({ ...one.strip(line - half, line + half), ...one.band(heights.mid - half / Math.cos(slope), heights.mid + half / Math.cos(slope)) }), make);
}

function midRail(where: Where, between: number, slope: Radians, seat: (half: number) => Pick<Seat, 'plan' | 'roll' | 'end'> & Rise, make: Maker): void {
  const r = gateSection(guard.mid).across / 2;
  const postRadius = inches(gateSection(guard.post).across / 2);
  const lean = radians(Math.abs(slope));
  const reach = lean === 0 ? copeReach(r, postRadius) : slopeCopeReach(r, postRadius, lean);
  // Two posts so near leave no rail between them.
  if (between - 2 * reach.short < LEAST_RAIL) return;
  const cut: EndCut = lean === 0 ? { kind: 'cope', postRadius } : { kind: 'slope-cope', postRadius, slope: lean };
  make.bar(where, 'guard', 'mid-rail', guard.mid, { long: between - 2 * reach.long, short: between - 2 * reach.short }, [cut, cut], seat(r));
}

/** The same across an end of the deck, which is level, from the post at the fence to the one at the corner. */
function endRails(catwalk: Catwalk, frame: StretchFrame, one: PartFrame, share: 0 | 1, make: Maker): void {
  const { width } = catwalk.brief;
  const { inset } = guard;
  const heights = railHeights(catwalk);
  const r = gateSection(guard.top).across / 2;
  const where = whereOf(frame, one);
  const between = width - 2 * inset;
  make.bar(where, 'guard', 'top-rail', guard.top, { long: between + 2 * r }, [SQUARE, SQUARE],
    { ...across(one, share, inset - r, width - inset + r, 2 * r), ...one.band(heights.top - r, heights.top + r) });
  midRail(where, between, radians(0), (half) => ({ ...across(one, share, inset, width - inset, 2 * half), ...one.band(heights.mid - half, heights.mid + half) }), make);
}
