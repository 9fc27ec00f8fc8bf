/** A pen gate or alley gate from the front: leaf, latch and stop between what it hangs on and what it closes on. */
import { viewPoint } from '../base/points.ts';
import { GATE_PRACTICE } from '../brief/gate-practice.ts';
import { PENS, printSize } from '../drafting/kit.ts';
import { type CalloutSpec, type Shape } from '../drafting/model.ts';
import { alleyPin, jambOffset, type AlleyGate, type Fence, type PenGate } from '../layout/index.ts';
import { boltHeight, hingeHeights } from '../parts/index.ts';
import { say, type StringKey } from '../text/index.ts';
import { type GateView, groundLine } from './gate-elevation.ts';
import { type GatePiece, rectangle, straight } from './gate-outline.ts';
import { type DrawInput } from './input.ts';

const { hinge, strikeGap, bolt, keeper } = GATE_PRACTICE.latchedGate;

/** What stands on either side of a leaf, and how far it reaches. */
interface Stand {
  readonly shapes: readonly Shape[];
  readonly left: number;
  readonly right: number;
  readonly top: number;
}

export function latchedGateView(input: DrawInput, gate: PenGate | AlleyGate, mark: string, pieces: readonly GatePiece[], levels: readonly number[]): GateView {
  const fence = fenceOf(input, gate.run, gate.side);
  const { height } = fence.brief;
  const { reach } = gate.swing;
  const jamb = reach + strikeGap;
  const { shapes, left, right, top } = gate.kind === 'pen-gate' ? jambs(gate, fence, jamb) : walls(input, gate, jamb);
  const [low, high] = hingeHeights(fence, gate.kind);
  const y = boltHeight(height);
  const from = gate.kind === 'pen-gate' ? -hinge.barrel / 2 : -alleyPin();
  return {
    id: `gate ${gate.path}`,
    title: titleOf(input, gate, mark),
    label: mark,
    pieces,
    around: [
      groundLine(left - 4, right + 4),
      ...shapes,
      ...[low, high].flatMap((at) => rectangle(PENS.outline, -hinge.barrel / 2, hinge.barrel / 2, at - hinge.length / 2, at + hinge.length / 2)),
    ],
    left,
    right,
    top,
    datum: from,
    widths: [hinge.barrel / 2, reach, jamb],
    heights: [...levels, low, y, high],
    callouts: [
      note('drawings.gate.hinge', 0, low, [1, -0.4]),
      note('drawings.gate.bolt', reach - bolt.sleeveLength - 1, y, [-1, 0.5]),
      note('drawings.gate.keeper', gate.kind === 'pen-gate' ? jamb - keeper.thickness : jamb - 1, y + 0.6, [1, 0.5]),
    ],
  };
}

const note = (key: StringKey, x: number, y: number, toward: readonly [number, number]): CalloutSpec =>
  ({ text: say(key), target: viewPoint(x, y), piece: null, toward: { x: toward[0], y: toward[1] }, layer: 'NOTES', optional: true });

const fenceOf = ({ layout }: DrawInput, run: string, side: string): Fence => layout.fences.find((fence) => fence.run === run && fence.side === side)!;

/** The two jamb posts: that on the hinge side may be the thicker. */
function jambs({ hingePost }: PenGate, { brief: { post, height } }: Fence, jamb: number): Stand {
  const left = -hinge.barrel / 2 - hingePost.along;
  const right = jamb + post.along;
  return {
    shapes: [...rectangle(PENS.outline, left, -hinge.barrel / 2, 0, height), ...rectangle(PENS.outline, jamb, right, 0, height)],
    left,
    right,
    top: height,
  };
}

/** The two fences that it stands between: faces and posts. */
function walls(input: DrawInput, { run, side, hingePost }: AlleyGate, jamb: number): Stand {
  const across = fenceOf(input, run, side === 'left' ? 'right' : 'left');
  const sides = [
    { fence: fenceOf(input, run, side), post: hingePost, face: -alleyPin(), way: -1 }, { fence: across, post: across.brief.post, face: jamb, way: 1 },
  ];
  const posts = sides.map(({ fence, post, face, way }) => {
    const middle = face + way * jambOffset(fence, post);
    return { low: middle - post.across / 2, high: middle + post.across / 2, face, height: fence.brief.height };
  });
  return {
    shapes: posts.flatMap(({ low, high, face, height }) => [...rectangle(PENS.outline, low, high, 0, height), straight(PENS.thin, face, 0, face, height)]),
    left: posts[0]!.low,
    right: posts[1]!.high,
    top: Math.max(...posts.map((post) => post.height)),
  };
}

/** Where it stands, from where it is seen, how it opens. */
function titleOf({ brief }: DrawInput, gate: PenGate | AlleyGate, mark: string): string {
  if (gate.kind === 'alley-gate') {
    return say('drawings.gate.alley', {
      mark, run: gate.run, side: gate.side, seen: say(gate.side === 'left' ? 'drawings.gate.seenWith' : 'drawings.gate.seenAgainst'), opens: say(`drawings.gate.opens.${gate.swings}`),
    });
  }
  // Of a left fence the walk runs to the right as the cattle see it, of a right one as a person outside does.
  const outside = (gate.side === 'right') === (gate.hangs === 'first');
  return say('drawings.gate.pen', {
    mark, run: gate.run, side: gate.side, at: printSize({ units: brief.units }, gate.u),
    seen: say(outside ? 'drawings.gate.seenOutside' : 'drawings.gate.seenInside'), opens: say(`drawings.gate.opens.${gate.swings}`),
  });
}
