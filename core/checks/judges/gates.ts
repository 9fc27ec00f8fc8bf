/** The crowd gate where it rests, what keeps gates still, what leaves do to their posts. */
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { alleyPin, isSwingGate, jambOffset, type CrowdGate, type SwingGate } from '../../layout/index.ts';
import { hingeHeights } from '../../parts/index.ts';
import { type Section } from '../../steel/index.ts';
import { say } from '../../text/index.ts';
import { printWeight } from '../../units/index.ts';
import { pounds } from '../../base/quantity.ts';
import { type Context } from '../context.ts';
import { judged, type Judge, type Outcome } from '../outcome.ts';
import { rules } from '../rules/table.ts';
import { meets } from '../rules/limit.ts';
import { hingeLoad, type Hung } from '../strength/hinge-load.ts';
import { inertia, modulus } from '../strength/section-strength.ts';
import { printed, printedAngle } from '../words/print.ts';
import { backstopsOf } from './backstops.ts';
import { manGatesOf } from './man-gates.ts';

/** Only reports: the alley width left clear, and the angle at which the open leaf rests. */
export const crowdGateRest: Judge = ({ brief, layout }) => {
  const { rest } = layout.crowdGate;
  if (rest === null) return [{ verdict: 'look', measured: null, where: say('where.noRest'), at: layout.pivot }];
  const where = say('where.rest', { angle: printedAngle(rest.angle), clear: printed(brief, rest.clear) });
  return [{ verdict: 'look', measured: rest.clear, where, at: layout.pivot }];
};

/** Leaves are stopped and sprung, a backstop's slides in guides; one that nothing holds open falls on what passes. */
export const quiet: Judge = (context) => {
  const backstops = backstopsOf(context);
  const loose = backstops.filter(({ held }) => held === 'none');
  if (loose.length > 0) return loose.map(({ path, at }) => judged(false, null, say('where.backstopNone', { opening: path }), at));
  const count = manGatesOf(context).length;
  const latched = context.layout.openings.filter(isSwingGate).length - count;
  return [judged(true, null, say('where.quietGates', { count, latched, backstops: backstops.length }), context.layout.pivot)];
};

/** Two measures of each leaf: its sag, then the post's stress over its yield. */
export const hingeLoads: Judge = (context) => {
  const { layout } = context;
  const limit = rules['hinge-load'].limit.values;
  return [layout.crowdGate, ...layout.openings.filter(isSwingGate)].flatMap((gate): readonly Outcome[] => {
    const hung = hungOf(context, gate);
    const { sag, stress } = hingeLoad(hung);
    const params = { gate: gate.kind === 'crowd-gate' ? say('where.crowdGate') : gate.path, weight: printWeight(pounds(hung.weight), context.brief.units) };
    return [
      judged(meets({ is: 'most', value: limit.sag }, sag), sag, say('where.sag', params), gate.at),
      judged(meets({ is: 'most', value: limit.stress }, stress), stress, say('where.postStress', params), gate.at),
    ];
  });
};

/** What a leaf hangs on: the post, how far its axis stands from the pin, along or across the fence, and the heights of the hinges. */
interface Hangs {
  readonly post: Section;
  readonly aside: number;
  readonly way: 'along' | 'across';
  readonly hinges: Hung['hinges'];
}

function hangsOn({ brief, layout }: Context, gate: CrowdGate | SwingGate): Hangs {
  const { crowdGate, hinge, latchedGate } = GATE_PRACTICE;
  if (gate.kind === 'crowd-gate') {
    const { pivotPost: post } = brief.crowdPen;
    const { height } = brief.fences.crowdPen;
    const way = post.across < post.along ? 'across' : 'along';
    return { post, aside: 0, way, hinges: [crowdGate.ground + crowdGate.ring.fromEnd, height - crowdGate.ring.fromEnd] };
  }
  const fence = layout.fences.find(({ run, side }) => run === gate.run && side === gate.side)!;
  const { post } = fence.brief;
  // A dock's posts are held fast at the ground below it.
  const dock = layout.ramps.find(({ name }) => name === gate.run)?.figures.height ?? 0;
  const raised = ([low, high]: readonly [number, number]): readonly [number, number] => [low + dock, high + dock];
  switch (gate.kind) {
    case 'man-gate':
      return { post, aside: hinge.barrel / 2 + post.along / 2, way: 'along', hinges: raised(hingeHeights(fence, gate.kind)) };
    case 'pen-gate':
      return { post: gate.hingePost, aside: latchedGate.hinge.barrel / 2 + gate.hingePost.along / 2, way: 'along', hinges: raised(hingeHeights(fence, gate.kind)) };
    case 'alley-gate':
      return { post: gate.hingePost, aside: alleyPin() + jambOffset(fence, gate.hingePost), way: 'across', hinges: hingeHeights(fence, gate.kind) };
  }
}

/** A leaf on its post: the crowd gate turns about its post's axis, the others about a pin beside theirs. */
function hungOf(context: Context, gate: CrowdGate | SwingGate): Hung {
  const { post, aside, way, hinges } = hangsOn(context, gate);
  let [weight, moment] = [0, 0];
  for (const { place, weight: own } of context.parts.pieces) {
    if (place.kind !== 'gate' || place.gate !== gate.path || !place.moves) continue;
    const { outline } = place;
    const x = outline.kind === 'bar' ? (outline.a.x + outline.b.x) / 2 : (outline.left + outline.right) / 2;
    weight += own;
    moment += own * (x + aside);
  }
  return { weight, center: moment / weight, reach: gate.swing.reach + aside, hinges, inertia: inertia(post, way), modulus: modulus(post, way) };
}
