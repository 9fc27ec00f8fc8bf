import { add, planPoint, scale, sub, type PlanPoint } from '../../base/points.ts';
import { curvePoint } from '../../base/curve.ts';
import { degrees, inches, radians } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { type BackstopBrief, type Brief, type ManGateBrief, type Side } from '../../brief/types.ts';
import { facePoint } from '../fence-points.ts';
import { type Fence } from '../types.ts';
import { type Spot } from './spots.ts';
import { type Backstop, type ManGate, type Opening, type Swing } from './types.ts';

/** The openings that stand, in the order of the brief. */
export function standOpenings(brief: Brief, spots: readonly Spot[], fences: readonly Fence[]): readonly Opening[] {
  return spots.map((spot) => {
    const { opening } = spot;
    return opening.kind === 'man-gate' ? manGate(spot, opening, fences) : backstop(brief, spot, opening, fences);
  });
}

const fenceOf = (fences: readonly Fence[], run: string, side: Side): Fence => {
  const fence = fences.find((one) => one.run === run && one.side === side);
  if (fence === undefined) throw new Error(`no fence ${run} ${side}`);
  return fence;
};

const stationOf = ({ run, along }: Spot): Backstop['station'] | null => (run.from === null || along === null ? null : inches(run.from + along));

function manGate(spot: Spot, opening: ManGateBrief, fences: readonly Fence[]): ManGate {
  const [{ line, u }] = [spot.places[0]!];
  const fence = fenceOf(fences, line.run, line.side);
  const [from, to] = [inches(u - opening.width / 2), inches(u + opening.width / 2)];
  const after = fence.spans.find((span) => span.start.kind === 'jamb' && Math.abs(span.skinFrom - to) < SAME_LENGTH);
  if (after === undefined) throw new Error(`no jamb at ${String(to)} of ${line.run} ${line.side}`);
  return {
    kind: 'man-gate',
    run: line.run,
    side: line.side,
    path: opening.path,
    at: facePoint(fence, u, 0),
    station: stationOf(spot),
    width: opening.width,
    u,
    from,
    to,
    bay: after.firstBay - 1,
    swing: manGateSwing(fence, from, to),
  };
}

/** The leaf's pin stands half a barrel off the first jamb, its barrel flush with the cattle side of the rails; the leaf turns to the cattle. */
function manGateSwing(fence: Fence, from: number, to: number): Swing {
  const { hinge, manGate: { strikeGap, opens } } = GATE_PRACTICE;
  const offset = fence.section.t + hinge.barrel / 2;
  const a = facePoint(fence, from, offset);
  const b = facePoint(fence, to, offset);
  const clear = Math.hypot(b.x - a.x, b.y - a.y);
  const pin = add(a, scale(sub(b, a), hinge.barrel / 2 / clear)) as PlanPoint;
  return {
    pin,
    reach: inches(clear - hinge.barrel / 2 - strikeGap),
    shut: radians(Math.atan2(b.y - a.y, b.x - a.x)),
    turn: radians(-fence.outward * degrees(opens)),
  };
}

function backstop(brief: Brief, spot: Spot, opening: BackstopBrief, fences: readonly Fence[]): Backstop {
  const station = stationOf(spot);
  if (station === null) throw new Error(`${opening.path} does not stand on the chute`);
  const { run } = spot;
  const at = curvePoint(run.path, (station - run.from!) / run.length);
  const sideOf = (side: Side): Backstop['sides'][Side] => {
    const { u } = spot.places.find(({ line }) => line.side === side)!;
    const fence = fenceOf(fences, run.name, side);
    const span = fence.spans.find(({ posts }) => posts.some((post) => Math.abs(post - u) < SAME_LENGTH));
    if (span === undefined) throw new Error(`no post at ${String(u)} of ${run.name} ${side}`);
    const i = span.posts.findIndex((post) => Math.abs(post - u) < SAME_LENGTH);
    return { u, bay: span.firstBay + i, post: facePoint(fence, u, fence.section.k) };
  };
  return {
    kind: 'backstop',
    run: run.name,
    path: opening.path,
    at: planPoint(at.x, at.y),
    station,
    width: brief.chute.width,
    held: opening.held,
    sides: { left: sideOf('left'), right: sideOf('right') },
  };
}
