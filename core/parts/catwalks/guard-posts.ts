/** Posts of a deck's guard. */
import { add, scale, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, radians } from '../../base/quantity.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { gateSection } from '../../brief/gate-steel.ts';
import { type Catwalk } from '../../layout/index.ts';
import { type EndCut } from '../types.ts';
import { type PartFrame, type StretchFrame } from './frame.ts';
import { rectangleOf, SQUARE, type Maker } from './own.ts';

const { guard, steps } = CATWALK_PRACTICE;

/**
 * A post where parts meet along the open edge and at the deck's ends, there beside the fence too. All stand plumb, cut to the deck's
 * slope at foot and head; where the slope breaks square.
 */
export function guardPosts(catwalk: Catwalk, frame: StretchFrame, first: boolean, last: boolean, make: Maker): void {
  const { width } = catwalk.brief;
  const { parts } = frame;
  const open = width - guard.inset;
  parts.forEach((one, i) => {
    const end = i === 0 && first ? guard.inset : 0;
    if (i === 0 && first && besideFence(catwalk, 'start')) guardPost(catwalk, frame, one, { share: 0, aside: guard.inset, inside: end }, make);
    guardPost(catwalk, frame, one, { share: 0, aside: open, inside: end }, make);
    if (i !== parts.length - 1 || !last) return;
    if (besideFence(catwalk, 'end')) guardPost(catwalk, frame, one, { share: 1, aside: guard.inset, inside: guard.inset }, make);
    guardPost(catwalk, frame, one, { share: 1, aside: open, inside: guard.inset }, make);
  });
}

/** Whether an end has a post at the fence: one with rails across it, or rails that go on down its steps. */
function besideFence({ flights }: Catwalk, at: 'start' | 'end'): boolean {
  const flight = flights.find((one) => one.at === at);
  return flight?.inLine !== true || flight.risers >= steps.railFrom;
}

interface Spot {
  readonly share: 0 | 1;
  readonly aside: number;
  /** Inches inside the part's end. */
  readonly inside: number;
}

function guardPost(catwalk: Catwalk, { stretch }: StretchFrame, one: PartFrame, { share, aside, inside }: Spot, make: Maker): void {
  const { part, turns } = one;
  const r = gateSection(guard.post).across / 2;
  const box = (of: (share: 0 | 1, aside: number) => Vec): readonly Vec[] => {
    const [end, other] = [of(share, aside), of(share === 0 ? 1 : 0, aside)];
    const total = Math.hypot(other.x - end.x, other.y - end.y);
    const middle = add(end, scale(sub(other, end), inside / total));
    return rectangleOf(middle.x - r, middle.x + r, middle.y - r, middle.y + r);
  };
  const slope = inside === 0 && turns[share] !== 0 ? 0 : part.slope;
  const rail = gateSection(guard.top).across / 2;
  const long = catwalk.guardHeight - rail - rail / Math.cos(slope);
  const foot = one.top(share, inside);
  const lean = r * Math.tan(slope);
  const roll = box(one.flat);
  const [x0, x1] = [roll[0]!.x, roll[1]!.x];
  const cut: EndCut = slope === 0 ? SQUARE : { kind: 'slope-mitre', angle: radians(Math.abs(slope)) };
  make.bar({ run: stretch.run, side: stretch.side, bay: part.bay }, 'guard', 'guard-post', guard.post, { long }, [cut, cut], {
    plan: box(one.at) as readonly PlanPoint[], roll, low: inches(foot - Math.abs(lean)), high: inches(foot + long + Math.abs(lean)),
    leaning: slope === 0 ? null : [{ x: x0, y: foot - lean }, { x: x1, y: foot + lean }, { x: x1, y: foot + long + lean }, { x: x0, y: foot + long - lean }],
    end: inside === 0 ? null : share === 0 ? 'start' : 'end',
  });
}
