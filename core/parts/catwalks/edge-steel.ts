/** What stands on a deck's open edges: toe boards, and where the drop asks for one a guard. */
import { add, scale, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches } from '../../base/quantity.ts';
import { SAME_ANGLE } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Catwalk } from '../../layout/index.ts';
import { type EndCut } from '../types.ts';
import { copeReach } from '../saddle.ts';
import { type PartFrame, type StretchFrame } from './frame.ts';
import { rectangleOf, SQUARE, type Maker, type Seat, type Where } from './own.ts';

const { toeBoard, guard } = CATWALK_PRACTICE;
/** A midrail shorter than this is left out. */
const LEAST_RAIL = 1;

/** `first`, `last`: of the catwalk's stretches; the deck's two ends are open edges too. */
export function edgeSteel(catwalk: Catwalk, frame: StretchFrame, first: boolean, last: boolean, make: Maker): void {
  const { width } = catwalk.brief;
  for (const one of frame.parts) {
    if (one.part.landing !== null) continue;
    toe(whereOf(frame, one), one.part.far, catwalk, one.strip(width - toeBoard.thickness, width), make);
    if (catwalk.guarded) sideRails(catwalk, frame, one, make);
  }
  const ends = [...(first ? [{ one: frame.parts[0]!, share: 0 as const }] : []), ...(last ? [{ one: frame.parts[frame.parts.length - 1]!, share: 1 as const }] : [])];
  for (const { one, share } of ends) {
    toe(whereOf(frame, one), width, catwalk, across(one, share, 0, width, toeBoard.thickness), make);
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

function toe(where: Where, long: number, { deckHeight }: Catwalk, seat: Pick<Seat, 'plan' | 'roll' | 'end'>, make: Maker): void {
  const low = deckHeight + toeBoard.gap;
  make.plate(where, 'toe-board', 'toe', toeBoard.plate, { long, high: toeBoard.height }, { ...seat, low: inches(low), high: inches(low + toeBoard.height) });
}

/** Heights of the two rails' axes over the ground. */
function railHeights({ deckHeight, guardHeight }: Catwalk): { readonly top: number; readonly mid: number } {
  return { top: deckHeight + guardHeight - gateSection(guard.top).across / 2, mid: deckHeight + guardHeight / 2 };
}

/** A top rail over the posts, mitred to its neighbors, and a midrail coped between the posts. */
function sideRails(catwalk: Catwalk, frame: StretchFrame, one: PartFrame, make: Maker): void {
  const { width } = catwalk.brief;
  const line = width - guard.inset;
  const r = gateSection(guard.top).across / 2;
  const sides = [one.chord(line - r), one.chord(line + r)];
  const cut: EndCut = one.part.angle > SAME_ANGLE ? { kind: 'mitre', angle: one.part.mitre } : SQUARE;
  const heights = railHeights(catwalk);
  const where = whereOf(frame, one);
  make.bar(where, 'guard', 'top-rail', guard.top, { long: Math.max(...sides), short: Math.min(...sides) }, [cut, cut],
    { ...one.strip(line - r, line + r), low: inches(heights.top - r), high: inches(heights.top + r) });
  midRail(where, one.chord(line), heights.mid, (half) => one.strip(line - half, line + half), make);
}

function midRail(where: Where, between: number, height: number, seat: (half: number) => Pick<Seat, 'plan' | 'roll' | 'end'>, make: Maker): void {
  const r = gateSection(guard.mid).across / 2;
  const postRadius = inches(gateSection(guard.post).across / 2);
  const reach = copeReach(r, postRadius);
  // Two posts so near leave no rail between them.
  if (between - 2 * reach.short < LEAST_RAIL) return;
  const cut: EndCut = { kind: 'cope', postRadius };
  make.bar(where, 'guard', 'mid-rail', guard.mid, { long: between - 2 * reach.long, short: between - 2 * reach.short }, [cut, cut],
    { ...seat(r), low: inches(height - r), high: inches(height + r) });
}

/** The same across an end of the deck, from the post at the fence to the one at the corner. */
function endRails(catwalk: Catwalk, frame: StretchFrame, one: PartFrame, share: 0 | 1, make: Maker): void {
  const { width } = catwalk.brief;
  const { inset } = guard;
  const heights = railHeights(catwalk);
  const r = gateSection(guard.top).across / 2;
  const where = whereOf(frame, one);
  const between = width - 2 * inset;
  make.bar(where, 'guard', 'top-rail', guard.top, { long: between + 2 * r }, [SQUARE, SQUARE],
    { ...across(one, share, inset - r, width - inset + r, 2 * r), low: inches(heights.top - r), high: inches(heights.top + r) });
  midRail(where, between, heights.mid, (half) => across(one, share, inset, width - inset, 2 * half), make);
}

/** A post where parts meet along the open edge and at the deck's ends, there beside the fence too. */
function guardPosts(catwalk: Catwalk, frame: StretchFrame, first: boolean, last: boolean, make: Maker): void {
  const { width } = catwalk.brief;
  const { parts } = frame;
  const post = (one: PartFrame, share: 0 | 1, aside: number, inside: number): void => {
    const r = gateSection(guard.post).across / 2;
    const box = (of: (share: 0 | 1, aside: number) => Vec): readonly Vec[] => {
      const [end, other] = [of(share, aside), of(share === 0 ? 1 : 0, aside)];
      const total = Math.hypot(other.x - end.x, other.y - end.y);
      const middle = add(end, scale(sub(other, end), inside / total));
      return rectangleOf(middle.x - r, middle.x + r, middle.y - r, middle.y + r);
    };
    const high = catwalk.deckHeight + catwalk.guardHeight - 2 * gateSection(guard.top).across / 2;
    make.bar(whereOf(frame, one), 'guard', 'guard-post', guard.post, { long: high - catwalk.deckHeight }, [SQUARE, SQUARE],
      { plan: box(one.at) as readonly PlanPoint[], roll: box(one.flat), low: catwalk.deckHeight, high: inches(high), end: inside === 0 ? null : share === 0 ? 'start' : 'end' });
  };
  const open = width - guard.inset;
  parts.forEach((one, i) => {
    const end = i === 0 && first ? guard.inset : 0;
    if (i === 0 && first) post(one, 0, guard.inset, end);
    post(one, 0, open, end);
    if (i !== parts.length - 1 || !last) return;
    post(one, 1, guard.inset, guard.inset);
    post(one, 1, open, guard.inset);
  });
}
