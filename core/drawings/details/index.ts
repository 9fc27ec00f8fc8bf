/** Details with their weld symbols: only those of parts that this project has, each with the figures of its own geometry. */
import { say } from '../../text/index.ts';
import { type Fence } from '../../layout/index.ts';
import { gateMarks, isRampFence } from '../../parts/index.ts';
import { type Detail } from '../detail.ts';
import { piecesOf } from '../gate-views.ts';
import { type DrawInput } from '../input.ts';
import { type Drawing } from '../../drafting/model.ts';
import { bracketDetail } from './deck-bracket.ts';
import { catwalkMark } from '../catwalks/shapes.ts';
import { backstopFrame, uprightOnPost } from './backstop-frame.ts';
import { frameCorner } from './frame-corner.ts';
import { capDetail } from './cap.ts';
import { detailPages } from './pages.ts';
import { latchDetail } from './latch.ts';
import { ringHinge } from './ring-hinge.ts';
import { slopeEnd } from './slope-end.ts';
import { spliceDetail } from './splice.ts';
import { eyeDetail, springDetail } from './spring-eye.ts';
import { stitchDetail } from './stitches.ts';
import { toothDetail } from './tooth.ts';

export const detailDrawings = (input: DrawInput): Drawing[] =>
  detailPages(input, detailsOf(input), '12', say('drawings.detail.title'), say('drawings.detail.file'));

export function detailsOf(input: DrawInput): Detail[] {
  const { brief, layout } = input;
  const fences = layout.fences.filter((fence) => !isRampFence(layout, fence));
  const lapped = firsts(layout.fences.filter((fence) => fence.brief.construction === 'lapped'), ({ brief: one }) => [one.rail.name, one.post.name, one.sheet?.name]);
  const skinned = firsts(fences.filter(({ brief: one }) => one.solidTo > one.solidFrom), ({ brief: one }) => [one.construction, one.rail.name, one.sheet?.name]);
  const marks = gateMarks(layout);
  const man = layout.openings.flatMap((one) => (one.kind === 'man-gate' ? [one] : [])).slice(0, 1);
  const backstop = layout.openings.flatMap((one) => (one.kind === 'backstop' ? [one] : [])).slice(0, 1);
  const latched = [...new Map(layout.openings.flatMap((one) => (one.kind === 'pen-gate' || one.kind === 'alley-gate' ? [[one.kind, one] as const] : []))).values()];
  const fenceOf = (run: string, side: string): Fence => layout.fences.find((fence) => fence.run === run && fence.side === side)!;
  const ramps = layout.ramps.flatMap((ramp) => {
    const [fence] = layout.fences.filter(({ run }) => run === ramp.name);
    return fence === undefined ? [] : [slopeEnd(brief, ramp, fence)];
  });
  // One of each shape of bracket: marks tell them apart.
  const brackets = input.parts.pieces.filter(({ place }) => place.kind === 'catwalk' && place.part === 'bracket');
  const decks = layout.catwalks.flatMap((catwalk) => {
    const first = brackets.find(({ place }) => place.kind === 'catwalk' && place.catwalk === catwalk.path);
    return first === undefined ? [] : [{ catwalk, first }];
  }).filter(({ first }, i, all) => all.findIndex((one) => one.first.mark === first.mark) === i)
    .map(({ catwalk, first }) => bracketDetail(brief, catwalkMark(layout, catwalk), fenceOf(first.run, first.side), first));
  return [
    ...lapped.map((fence) => spliceDetail(brief, fence)),
    ...skinned.map((fence) => stitchDetail(brief, fence)),
    capDetail(brief, layout.posts, input.parts.pieces),
    ringHinge(brief, layout.crowdGate),
    frameCorner(brief, marks.get(layout.crowdGate.path)!, piecesOf(input, layout.crowdGate.path)),
    ...(layout.crowdGate.teeth.length > 0 ? [toothDetail(brief)] : []),
    ...man.map((gate) => springDetail(brief, fenceOf(gate.run, gate.side), marks.get(gate.path)!, piecesOf(input, gate.path))),
    ...man.map((gate) => eyeDetail(brief, piecesOf(input, gate.path))),
    ...man.map((gate) => frameCorner(brief, marks.get(gate.path)!, piecesOf(input, gate.path))),
    ...latched.flatMap((gate) => [latchDetail(brief, marks.get(gate.path)!, piecesOf(input, gate.path), fenceOf(gate.run, gate.side).brief.post.wall), frameCorner(brief, marks.get(gate.path)!, piecesOf(input, gate.path))]),
    ...backstop.flatMap((gate) => [backstopFrame, uprightOnPost].map((of) => of(brief, gate, marks.get(gate.path)!, fenceOf(gate.run, 'left')))),
    ...ramps,
    ...decks,
  ].filter((detail) => detail !== null);
}

/** The first of each that says the same. */
function firsts(fences: readonly Fence[], of: (fence: Fence) => readonly unknown[]): readonly Fence[] {
  const found = new Map<string, Fence>();
  for (const fence of fences) {
    const key = JSON.stringify(of(fence));
    if (!found.has(key)) found.set(key, fence);
  }
  return [...found.values()];
}
