/** The welds of the gates: frames, bars, skins, hinges, stops, teeth, and a backstop's frame over the chute. */
import { inches } from '../../base/quantity.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { type Brief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { type Hardware, type Parts, type Piece } from '../../parts/index.ts';
import { parseFlatBar, parseSection, parseSheet, type Section } from '../../steel/index.ts';
import { filletArea, squareArea } from './deposit.ts';
import { endLength, perimeter } from './fence-welds.ts';
import { filletLot, lotOf } from './lot.ts';
import { WELD_PRACTICE } from './practice.ts';
import { barrelWall, barWeld, buttWeld, gateSkinWeld, hingeWeld, latchWeld, roundEndWeld, stopWeld, toothWeld } from './symbols.ts';
import { type WeldLot } from './types.ts';

type GatePlace = Extract<Piece['place'], { kind: 'gate' }>;
interface Member {
  readonly piece: Piece;
  readonly place: GatePlace;
}

export function gateWelds(brief: Brief, layout: Layout, parts: Parts): readonly WeldLot[] {
  const gates = new Map<string, Member[]>();
  for (const piece of parts.pieces) {
    if (piece.place.kind !== 'gate') continue;
    const list = gates.get(piece.place.gate);
    if (list === undefined) gates.set(piece.place.gate, [{ piece, place: piece.place }]);
    else list.push({ piece, place: piece.place });
  }
  return [...gates].flatMap(([path, members]) => {
    const jamb = jambWall(brief, layout, members[0]!.piece);
    const frame = sectionOf(members, 'stile');
    const hung = frame === null ? [] : parts.hardware.filter((one) => one.path === path).flatMap((one) => hungLots(brief, members[0]!.piece.run, one, frame, hingeSeat(members, one, jamb)));
    return [...(frame === null ? [] : [...leafLots(brief, members, frame), ...latchLots(brief, members, frame, jamb)]), ...standingLots(brief, members, jamb), ...hung];
  });
}

const ofPart = (members: readonly Member[], part: GatePlace['part']): readonly Member[] => members.filter(({ place }) => place.part === part);

function sectionOf(members: readonly Member[], part: GatePlace['part']): Section | null {
  const [first] = ofPart(members, part);
  return first === undefined ? null : parseSection(first.piece.section);
}

/** Wall of the post that a gate hangs on or stands by. */
function jambWall(brief: Brief, layout: Layout, { run, side }: Piece): ReturnType<typeof inches> {
  return layout.fences.find((fence) => fence.run === run && fence.side === side)?.brief.post.wall ?? brief.crowdPen.pivotPost.wall;
}

/** The frame's corners, splices of long members, bars in the frame, the skin on both. */
function leafLots(brief: Brief, members: readonly Member[], frame: Section): readonly WeldLot[] {
  const { run } = members[0]!.piece;
  const area = squareArea(frame.wall, 0, WELD_PRACTICE.leastGap);
  const corners = ofPart(members, 'stile').flatMap(({ piece }) => piece.ends.filter((end) => end.kind === 'mitre'));
  const bars = ofPart(members, 'bar');
  const bar = sectionOf(members, 'bar');
  const cut = bars.flatMap(({ piece }) => piece.ends.filter((end) => end.kind === 'cope'));
  const spliced = [...ofPart(members, 'stile'), ...ofPart(members, 'rail'), ...bars].flatMap(({ piece }) => {
    const section = parseSection(piece.section);
    return section === null ? [] : piece.ends.filter((end) => end.kind === 'square').map(() => section);
  });
  const splice = spliced[0];
  const heights = [...new Set(bars.flatMap(({ place: { outline } }) => (outline.kind === 'bar' ? [outline.a.y as number] : [])))];
  return [
    ...(corners.length > 0 ? [lotOf(run, buttWeld(brief, 'frame-corner', frame.wall, 0, false), corners.length, endLength(corners[0]!, frame), area)] : []),
    // Two square ends make one splice.
    ...(splice === undefined ? [] : [lotOf(run, buttWeld(brief, 'frame-splice', splice.wall, 0, false), spliced.length / 2, perimeter(splice), squareArea(splice.wall, 0, WELD_PRACTICE.leastGap))]),
    ...(bar === null || cut.length === 0 ? [] : [lotOf(run, barWeld(brief, bar, frame), cut.length, endLength(cut[0]!, bar), filletArea(barWeld(brief, bar, frame).symbol.arrow!.size!))]),
    ...ofPart(members, 'skin').map(({ piece, place: { outline } }) => {
      const thickness = parseSheet(piece.section)?.thickness ?? inches(Infinity);
      if (outline.kind !== 'plate') throw new Error(`a gate's skin ${piece.key} is no plate`);
      const [wide, tall] = [outline.right - outline.left, outline.top - outline.bottom];
      const crossed = heights.filter((y) => y > outline.bottom && y < outline.top).map(() => wide);
      return filletLot(run, gateSkinWeld(brief, thickness, frame.wall), [wide, wide, tall, tall, ...crossed]);
    }),
  ];
}

type PlateJoint = Parameters<typeof latchWeld>[1];

/** Corner gussets on both legs, hinge tabs and spring eyes; sleeves along the leaf, a strap's ends on its corners, keeper and brackets upright on the jamb; a handle stands on its bolt. */
function latchLots(brief: Brief, members: readonly Member[], frame: Section, jamb: ReturnType<typeof inches>): readonly WeldLot[] {
  const { run } = members[0]!.piece;
  const thickness = ({ piece }: Member): ReturnType<typeof inches> => parseSheet(piece.section)?.thickness ?? parseFlatBar(piece.section)?.thickness ?? parseSection(piece.section)?.wall ?? frame.wall;
  const lots = (parts: readonly GatePlace['part'][], joint: PlateJoint, other: number, seam: (member: Member) => readonly number[]): readonly WeldLot[] =>
    grouped(parts.flatMap((part) => ofPart(members, part)).map((member) => filletLot(run, latchWeld(brief, joint, inches(Math.min(thickness(member), other))), seam(member))));
  return [
    ...lots(['sleeve', 'handle'], 'latch-leaf', frame.wall, ({ piece, place }) => [place.part === 'handle' ? (parseSection(piece.section)?.across ?? 1) * 1.5 : piece.length]),
    ...lots(['strap'], 'latch-leaf', frame.wall, ({ piece }) => Array<number>(2).fill(parseFlatBar(piece.section)?.width ?? 0)),
    ...lots(['gusset'], 'gusset-frame', frame.wall, ({ piece }) => Array<number>(2).fill(piece.length - GATE_PRACTICE.gusset.clip)),
    ...lots(['tab'], 'tab-post', jamb, ({ piece }) => [piece.length]),
    ...lots(['eye'], 'spring-eye', Math.min(frame.wall, jamb), ({ place: { outline } }) => (outline.kind === 'plate' ? [outline.right - outline.left] : [])),
    ...lots(['keeper'], 'latch-jamb', jamb, ({ piece }) => [piece.length]),
    ...lots(['bracket'], 'latch-jamb', jamb, ({ piece }) => [piece.flatHeight ?? piece.length]),
  ];
}

/** What stands still beside or over a leaf. */
function standingLots(brief: Brief, members: readonly Member[], jamb: ReturnType<typeof inches>): readonly WeldLot[] {
  const { run } = members[0]!.piece;
  const plates = (part: 'stop' | 'tooth') => ofPart(members, part).flatMap(({ piece, place: { outline } }) => {
    const thickness = parseSheet(piece.section)?.thickness;
    return outline.kind !== 'plate' || thickness === undefined ? [] : [{ outline, thickness }];
  });
  const uprights = ofPart(members, 'upright').flatMap(({ piece }) => parseSection(piece.section) ?? []);
  const beam = sectionOf(members, 'beam');
  const guide = sectionOf(members, 'guide');
  const guides = 2 * ofPart(members, 'guide').length;
  const topWall = brief.fences.crowdPen.rail.wall;
  return [
    ...plates('stop').map(({ outline, thickness }) => filletLot(run, stopWeld(brief, thickness, jamb), [outline.top - outline.bottom])),
    ...grouped(plates('tooth').map(({ outline, thickness }) => filletLot(run, toothWeld(brief, thickness, topWall), [outline.right - outline.left]))),
    ...grouped(uprights.map((upright) => lotOf(run, buttWeld(brief, 'upright-post', upright.wall, 0, true), 1, perimeter(upright), squareArea(upright.wall, 0, WELD_PRACTICE.leastGap)))),
    ...(beam === null ? [] : grouped(uprights.map((upright) => {
      const weld = roundEndWeld(brief, 'beam-upright', beam.wall, upright.wall);
      return lotOf(run, weld, 1, perimeter(upright), filletArea(weld.symbol.arrow!.size!));
    }))),
    ...(guide === null || beam === null ? [] : [lotOf(run, roundEndWeld(brief, 'guide-end', guide.wall, beam.wall), guides, perimeter(guide), filletArea(roundEndWeld(brief, 'guide-end', guide.wall, beam.wall).symbol.arrow!.size!))]),
  ];
}

/** Lots of one weld as one. */
function grouped(lots: readonly WeldLot[]): readonly WeldLot[] {
  const [first] = lots;
  if (first === undefined) return [];
  const sum = (of: (lot: WeldLot) => number): number => lots.reduce((total, lot) => total + of(lot), 0);
  return [{ ...first, count: sum(({ count }) => count), length: sum(({ length }) => length), volume: sum(({ volume }) => volume) }];
}

/** The thinner of what a hinge's barrel and its jamb are: beside a lapped fence the jamb is a tab. */
function hingeSeat(members: readonly Member[], { size }: Hardware, jamb: ReturnType<typeof inches>): ReturnType<typeof inches> {
  const [tab] = ofPart(members, 'tab');
  const thickness = tab === undefined ? undefined : parseSheet(tab.piece.section)?.thickness;
  if (thickness === undefined || size?.kind !== 'barrel') return jamb;
  return inches(Math.min(thickness, barrelWall(size.diameter)));
}

/** Bought parts that are welded on. */
function hungLots(brief: Brief, run: string, { item, size, quantity }: Hardware, frame: Section, jamb: ReturnType<typeof inches>): readonly WeldLot[] {
  const each = (long: number): readonly number[] => Array.from({ length: quantity }, () => long);
  switch (item) {
    case 'hinge': {
      const long = size?.kind === 'barrel' ? size.length : GATE_PRACTICE.hinge.length;
      return [filletLot(run, hingeWeld(brief, 'hinge-leaf', frame.wall), each(long)), filletLot(run, hingeWeld(brief, 'hinge-jamb', jamb), each(long))];
    }
    case 'ring-hinge':
      return [filletLot(run, hingeWeld(brief, 'ring-leaf', frame.wall), each(GATE_PRACTICE.crowdGate.ring.width))];
    default:
      return [];
  }
}
