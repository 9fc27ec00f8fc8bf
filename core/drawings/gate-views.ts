/** What each kind of gate shows from the front. */
import { GATE_PRACTICE } from '../brief/gate-practice.ts';
import { PENS, printSize } from '../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../drafting/model.ts';
import { viewPoint } from '../base/points.ts';
import { inches } from '../base/quantity.ts';
import { type Backstop, type CrowdGate, type Fence, type Layout, type ManGate } from '../layout/index.ts';
import { beamHeight, type GatePoint, hingeHeights, type Piece } from '../parts/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { type GateView, groundLine } from './gate-elevation.ts';
import { rectangle, straight, type GatePiece } from './gate-outline.ts';
import { type DrawInput } from './input.ts';
import { latchedGateView } from './latched-gate-view.ts';

/** Every gate of a design from the front, in the order of the lists; `mark` names it. */
export function gateViews(input: DrawInput, marks: ReadonlyMap<string, string>): GateView[] {
  const { layout } = input;
  return [layout.crowdGate, ...layout.openings].flatMap((gate) => {
    const mark = marks.get(gate.path)!;
    const pieces = piecesOf(input, gate.path);
    switch (gate.kind) {
      case 'crowd-gate':
        return [crowdView(input, gate, mark, pieces), teethView(input, gate, mark, pieces)].filter((view) => view !== null);
      case 'man-gate':
        return [manGateView(input, gate, mark, pieces)];
      case 'pen-gate':
      case 'alley-gate':
        return [latchedGateView(input, gate, mark, pieces, heightsOf(pieces))];
      case 'backstop':
        return [backstopView(input, gate, mark, pieces)];
    }
  });
}

export const piecesOf = (input: DrawInput, path: string): GatePiece[] =>
  input.parts.pieces.flatMap((piece: Piece) => (piece.place.kind === 'gate' && piece.place.gate === path ? [{ piece, place: piece.place }] : []));

const fenceOf = (layout: Layout, run: string, side: string): Fence => layout.fences.find((fence) => fence.run === run && fence.side === side)!;

const note = (key: StringKey, x: number, y: number, toward: readonly [number, number]): CalloutSpec =>
  ({ text: say(key), target: viewPoint(x, y), piece: null, toward: { x: toward[0], y: toward[1] }, layer: 'NOTES', optional: true });

/** Heights of the level members of a leaf, to their axes, and of the leaf's edges. */
function heightsOf(pieces: readonly GatePiece[]): number[] {
  return pieces.flatMap(({ place: { part, outline } }) => {
    if (outline.kind === 'plate') return part === 'skin' ? [outline.bottom, outline.top] : [];
    if (part === 'bar') return [outline.a.y];
    return part === 'stile' ? [outline.a.y - outline.size / 2, outline.b.y + outline.size / 2] : [];
  });
}

function manGateView(input: DrawInput, gate: ManGate, mark: string, pieces: readonly GatePiece[]): GateView {
  const { hinge, manGate: { strikeGap } } = GATE_PRACTICE;
  const fence = fenceOf(input.layout, gate.run, gate.side);
  const { brief } = fence;
  const post = brief.post.along;
  const from = -hinge.barrel / 2;
  const jamb = gate.swing.reach + strikeGap;
  const [low, high] = hingeHeights(fence, gate.kind);
  const [still, spring] = eyesOf(pieces);
  const around: Shape[] = [
    groundLine(from - post - 4, jamb + post + 4),
    ...rectangle(PENS.outline, from - post, from, 0, brief.height),
    ...rectangle(PENS.outline, jamb, jamb + post, 0, brief.height),
    ...[low, high].flatMap((y) => rectangle(PENS.outline, from, -from, y - hinge.length / 2, y + hinge.length / 2)),
    straight(PENS.center, still.x, still.y, spring.x, spring.y),
  ];
  return {
    id: `gate ${gate.path}`,
    title: say(gate.side === 'right' ? 'drawings.gate.manRight' : 'drawings.gate.manLeft', { mark, run: gate.run, side: gate.side, at: printSize({ units: input.brief.units }, gate.u) }),
    label: mark,
    pieces,
    around,
    left: from - post,
    right: jamb + post,
    top: brief.height,
    datum: from,
    widths: [hinge.barrel / 2, spring.x, gate.swing.reach, jamb],
    heights: [...heightsOf(pieces), low, spring.y, high],
    callouts: [
      note('drawings.gate.hinge', 0, low, [1, -0.4]),
      note('drawings.gate.spring', spring.x, spring.y, [1, 0.4]),
    ],
  };
}

/** Middles of the spring's eyes: on the post and on the leaf. */
function eyesOf(pieces: readonly GatePiece[]): readonly [GatePoint, GatePoint] {
  const eyes = pieces.flatMap(({ place: { part, outline } }) => (part === 'eye' && outline.kind === 'plate'
    ? [{ x: inches((outline.left + outline.right) / 2), y: inches((outline.bottom + outline.top) / 2) }] : [])).sort((a, b) => a.x - b.x);
  const [still, moving] = eyes;
  if (still === undefined || moving === undefined) throw new Error('a man gate without its spring\'s eyes');
  return [still, moving];
}

function crowdView(input: DrawInput, gate: CrowdGate, mark: string, all: readonly GatePiece[]): GateView {
  const { crowdPen, fences, units } = input.brief;
  const { ground, ring } = GATE_PRACTICE.crowdGate;
  const pieces = all.filter(({ place }) => place.part !== 'tooth');
  const half = crowdPen.pivotPost.along / 2;
  const { height } = fences.crowdPen;
  const levels = [ground + ring.fromEnd, height - ring.fromEnd];
  const print = (value: number): string => printSize({ units }, value);
  const title = gate.rest === null
    ? say('drawings.gate.crowdNoRest', { mark })
    : say('drawings.gate.crowd', { mark, angle: String(Math.round((gate.rest.angle * 1800) / Math.PI) / 10), clear: print(gate.rest.clear) });
  return {
    id: 'gate crowd',
    title,
    label: mark,
    pieces,
    around: [
      groundLine(-half - 6, crowdPen.radius + 4),
      ...rectangle(PENS.outline, -half, half, 0, height),
      straight(PENS.center, 0, -4, 0, height + 2),
      straight(PENS.center, crowdPen.radius, 0, crowdPen.radius, height),
      ...levels.flatMap((y) => rectangle(PENS.outline, -half - ring.thickness, gate.from, y - ring.width / 2, y + ring.width / 2)),
    ],
    left: -half - ring.thickness,
    right: crowdPen.radius,
    top: height,
    datum: 0,
    widths: [gate.from, gate.swing.reach, crowdPen.radius],
    heights: [...heightsOf(pieces), ...levels],
    callouts: [note('drawings.gate.ring', -half, levels[0]!, [1, -0.5]), note('drawings.gate.latch', gate.swing.reach, height, [-1, -1])],
  };
}

/** The first of the ratchet's teeth, on the top of the outer fence. */
function teethView(input: DrawInput, gate: CrowdGate, mark: string, all: readonly GatePiece[]): GateView | null {
  const pieces = all.filter(({ place }) => place.part === 'tooth').slice(0, 3);
  const { height } = input.brief.fences.crowdPen;
  if (pieces.length === 0) return null;
  const u = pieces.map(({ place: { outline } }) => (outline.kind === 'plate' ? (outline.left + outline.right) / 2 : 0));
  const rail = input.brief.fences.crowdPen.rail.along;
  const right = Math.max(...u) + 6;
  // Drawn from the top rail's foot up: its own ground is the rail's lower edge.
  const low = height - rail;
  const drop = ({ piece, place }: GatePiece): GatePiece => {
    const { outline } = place;
    if (outline.kind === 'bar') return { piece, place };
    return { piece, place: { ...place, outline: { ...outline, bottom: (outline.bottom - low) as typeof outline.bottom, top: (outline.top - low) as typeof outline.top } } };
  };
  return {
    id: 'gate teeth',
    title: say('drawings.gate.teeth', { mark, count: String(gate.teeth.length) }),
    label: mark,
    pieces: pieces.map(drop),
    around: [...rectangle(PENS.outline, 0, right, 0, rail)],
    left: 0,
    right,
    top: rail + GATE_PRACTICE.crowdGate.tooth.length,
    datum: 0,
    widths: u,
    heights: [rail, rail + GATE_PRACTICE.crowdGate.tooth.length],
    callouts: [],
  };
}

function backstopView(input: DrawInput, gate: Backstop, mark: string, pieces: readonly GatePiece[]): GateView {
  const { layout, brief } = input;
  const { beam, bottom, leafHeight } = GATE_PRACTICE.backstop;
  const sides = (['left', 'right'] as const).map((side) => {
    const fence = fenceOf(layout, gate.run, side);
    const half = fence.brief.post.across / 2;
    const axis = side === 'left' ? -fence.section.k : gate.width + fence.section.k;
    return { x0: axis - half, x1: axis + half, face: side === 'left' ? 0 : gate.width, height: fence.brief.height };
  });
  const [left, right] = [sides[0]!, sides[1]!];
  const top = Math.max(...pieces.flatMap(({ place: { outline } }) => (outline.kind === 'bar' ? [outline.a.y, outline.b.y] : []))) + 2;
  return {
    id: `gate ${gate.path}`,
    title: say('drawings.gate.backstop', { mark, run: gate.run, station: printSize({ units: brief.units }, gate.station), beam, held: say(`drawings.gate.held.${gate.held}`) }),
    label: mark,
    pieces,
    around: [
      groundLine(left.x0 - 6, right.x1 + 6),
      ...sides.flatMap(({ x0, x1, face, height }) => [...rectangle(PENS.outline, x0, x1, 0, height), straight(PENS.thin, face, 0, face, height)]),
      ...rectangle(PENS.hidden, left.face, right.face, GATE_PRACTICE.backstop.clearUnder, GATE_PRACTICE.backstop.clearUnder + leafHeight),
    ],
    left: left.x0,
    right: right.x1,
    top,
    datum: 0,
    widths: [GATE_PRACTICE.backstop.sideGap, gate.width - GATE_PRACTICE.backstop.sideGap, gate.width, right.x1],
    heights: [...heightsOf(pieces), bottom, bottom + leafHeight, GATE_PRACTICE.backstop.clearUnder, beamHeight(), left.height, right.height],
    callouts: [note('drawings.gate.held', gate.width / 2, GATE_PRACTICE.backstop.clearUnder, [1, 0.5])],
  };
}
