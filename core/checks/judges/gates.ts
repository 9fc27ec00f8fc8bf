/** The crowd gate where it rests, what keeps gates still, what leaves do to their posts. */
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { type CrowdGate, type ManGate } from '../../layout/index.ts';
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
  return [judged(true, null, say('where.quietGates', { count: manGatesOf(context).length, backstops: backstops.length }), context.layout.pivot)];
};

/** Two measures of each leaf: its sag, then the post's stress over its yield. */
export const hingeLoads: Judge = (context) => {
  const { layout } = context;
  const limit = rules['hinge-load'].limit.values;
  return [layout.crowdGate, ...manGatesOf(context)].flatMap((gate): readonly Outcome[] => {
    const hung = hungOf(context, gate);
    const { sag, stress } = hingeLoad(hung);
    const params = { gate: gate.kind === 'crowd-gate' ? say('where.crowdGate') : gate.path, weight: printWeight(pounds(hung.weight), context.brief.units) };
    return [
      judged(meets({ is: 'most', value: limit.sag }, sag), sag, say('where.sag', params), gate.at),
      judged(meets({ is: 'most', value: limit.stress }, stress), stress, say('where.postStress', params), gate.at),
    ];
  });
};

/** A leaf on its post: the crowd gate turns about its post's axis, a man gate about a pin beside the jamb post. */
function hungOf({ brief, layout, parts }: Context, gate: CrowdGate | ManGate): Hung {
  const { crowdGate, manGate, hinge } = GATE_PRACTICE;
  const crowd = gate.kind === 'crowd-gate';
  const fence = crowd ? brief.fences.crowdPen : layout.fences.find(({ run, side }) => run === gate.run && side === gate.side)!.brief;
  const post = crowd ? brief.crowdPen.pivotPost : fence.post;
  const aside = crowd ? 0 : hinge.barrel / 2 + post.along / 2;
  const [ground, end] = crowd ? [crowdGate.ground, crowdGate.ring.fromEnd] : [manGate.ground, hinge.fromEnd];
  let [weight, moment] = [0, 0];
  for (const { place, weight: own } of parts.pieces) {
    if (place.kind !== 'gate' || place.gate !== gate.path || !place.moves) continue;
    const { outline } = place;
    const x = outline.kind === 'bar' ? (outline.a.x + outline.b.x) / 2 : (outline.left + outline.right) / 2;
    weight += own;
    moment += own * (x + aside);
  }
  const way = crowd && post.across < post.along ? 'across' : 'along';
  return {
    weight,
    center: moment / weight,
    reach: gate.swing.reach + aside,
    hinges: [ground + end, fence.height - end],
    inertia: inertia(post, way),
    modulus: modulus(post, way),
  };
}
