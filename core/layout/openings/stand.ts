import { planPoint } from '../../base/points.ts';
import { curvePoint } from '../../base/curve.ts';
import { inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { hingePostOf } from '../../brief/gate-steel.ts';
import { type AlleyGateBrief, type BackstopBrief, type Brief, type JambedBrief, type Side } from '../../brief/types.ts';
import { facePoint } from '../fence-points.ts';
import { type Fence } from '../types.ts';
import { alleyGateSwing, manGateSwing, penGateSwing } from './leaf-swings.ts';
import { type Spot } from './spots.ts';
import { type AlleyGate, type Backstop, type JambedGate, type Opening, type PostPair } from './types.ts';

/** The openings that stand, in the order of the brief. */
export function standOpenings(brief: Brief, spots: readonly Spot[], fences: readonly Fence[]): readonly Opening[] {
  return spots.map((spot): Opening => {
    const { opening } = spot;
    switch (opening.kind) {
      case 'man-gate':
      case 'pen-gate':
        return jambedGate(spot, opening, fences);
      case 'alley-gate':
        return alleyGate(spot, opening, fences);
      case 'backstop':
        return backstop(brief, spot, opening, fences);
    }
  });
}

const fenceOf = (fences: readonly Fence[], run: string, side: Side): Fence => {
  const fence = fences.find((one) => one.run === run && one.side === side);
  if (fence === undefined) throw new Error(`no fence ${run} ${side}`);
  return fence;
};

const stationOf = ({ run, along }: Spot): Backstop['station'] | null => (run.from === null ? null : inches(run.from + along));

function jambedGate(spot: Spot, opening: JambedBrief, fences: readonly Fence[]): JambedGate {
  const [{ line, u }] = [spot.places[0]!];
  const fence = fenceOf(fences, line.run, line.side);
  const [from, to] = [inches(u - opening.width / 2), inches(u + opening.width / 2)];
  const after = fence.spans.find((span) => span.start.kind === 'jamb' && Math.abs(span.skinFrom - to) < SAME_LENGTH);
  if (after === undefined) throw new Error(`no jamb at ${String(to)} of ${line.run} ${line.side}`);
  const stands = {
    run: line.run, side: line.side, path: opening.path, at: facePoint(fence, u, 0), station: stationOf(spot), width: opening.width,
    u, from, to, bay: after.firstBay - 1,
  };
  if (opening.kind === 'man-gate') return { kind: 'man-gate', ...stands, swing: manGateSwing(fence, from, to) };
  const { swings, hangs } = opening;
  return { kind: 'pen-gate', ...stands, swings, hangs, hingePost: hingePostOf(fence.brief, opening), sorts: opening.sorts === true, swing: penGateSwing(fence, from, to, opening) };
}

/** The posts on both sides of a run where an opening across it stands. */
function postPair({ run, places }: Spot, fences: readonly Fence[]): PostPair {
  const sideOf = (side: Side): PostPair[Side] => {
    const { u } = places.find(({ line }) => line.side === side)!;
    const fence = fenceOf(fences, run.name, side);
    const span = fence.spans.find(({ posts }) => posts.some((post) => Math.abs(post - u) < SAME_LENGTH));
    if (span === undefined) throw new Error(`no post at ${String(u)} of ${run.name} ${side}`);
    const i = span.posts.findIndex((post) => Math.abs(post - u) < SAME_LENGTH);
    return { u, bay: span.firstBay + i, post: facePoint(fence, u, fence.section.k) };
  };
  return { left: sideOf('left'), right: sideOf('right') };
}

function alleyGate(spot: Spot, opening: AlleyGateBrief, fences: readonly Fence[]): AlleyGate {
  const { run, along } = spot;
  const sides = postPair(spot, fences);
  const { side, swings } = opening;
  const hinge = fenceOf(fences, run.name, side);
  const across = fenceOf(fences, run.name, side === 'left' ? 'right' : 'left');
  const at = curvePoint(run.path, along / run.length);
  return {
    kind: 'alley-gate', run: run.name, side, path: opening.path, at: planPoint(at.x, at.y), station: stationOf(spot), width: run.width, swings, sides,
    hingePost: hinge.spans.flatMap(({ thick = [] }) => thick).find(({ u }) => Math.abs(u - sides[side].u) < SAME_LENGTH)?.post ?? hinge.brief.post,
    swing: alleyGateSwing(hinge, sides[side].u, facePoint(across, sides[across.side].u, 0), swings),
  };
}

function backstop(brief: Brief, spot: Spot, opening: BackstopBrief, fences: readonly Fence[]): Backstop {
  const station = stationOf(spot);
  if (station === null) throw new Error(`${opening.path} does not stand on the chute`);
  const { run } = spot;
  const at = curvePoint(run.path, (station - run.from!) / run.length);
  return {
    kind: 'backstop', run: run.name, path: opening.path, at: planPoint(at.x, at.y), station, width: brief.chute.width, held: opening.held,
    sides: postPair(spot, fences),
  };
}
