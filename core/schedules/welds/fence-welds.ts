/** The welds of the fences: rails to posts, rails to one another, skins to rails and to one another, closing plates. */
import { inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief } from '../../brief/types.ts';
import { type Fence, type Layout, type Span } from '../../layout/index.ts';
import { type EndCut, type Parts, type Piece } from '../../parts/index.ts';
import { type Section } from '../../steel/index.ts';
import { crossedRounds, ellipseLength, filletArea, flareArea, squareArea, stitchedLength } from './deposit.ts';
import { filletLot, lotOf } from './lot.ts';
import { WELD_PRACTICE } from './practice.ts';
import { saddleLength } from './saddle-length.ts';
import { buttWeld, copedWeld, lappedWeld, plateWeld, seamWeld, skinWeld } from './symbols.ts';
import { type WeldLot } from './types.ts';

const keyOf = ({ run, side }: { readonly run: string; readonly side: string }): string => `${run} ${side}`;

export function fenceWelds(brief: Brief, layout: Layout, parts: Parts): readonly WeldLot[] {
  const pieces = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    const list = pieces.get(keyOf(piece));
    if (list === undefined) pieces.set(keyOf(piece), [piece]);
    else list.push(piece);
  }
  const goesOn = downstream(layout);
  return layout.fences.flatMap((fence) => {
    const own = pieces.get(keyOf(fence)) ?? [];
    const rails = own.filter(({ place }) => place.kind === 'rail');
    const skins = own.filter(({ place }) => place.kind === 'skin');
    return [
      ...(fence.brief.construction === 'lapped' ? lappedLots(brief, fence, rails, goesOn) : copedLots(brief, fence, rails)),
      ...skinLots(brief, fence, skins),
      ...plateLots(brief, fence, own.filter(({ place }) => place.kind === 'plate')),
    ];
  });
}

/** How many rows of a span go on, at their own heights, as lapped rails of what stands beyond its end on the same post. */
type GoesOn = (fence: Fence, span: Span) => number;

function downstream(layout: Layout): GoesOn {
  const named = new Map(layout.fences.map((fence) => [keyOf(fence), fence]));
  const next = new Map(layout.posts.flatMap((post) => (post.alsoEnds === null ? [] : [[keyOf(post.alsoEnds), named.get(keyOf(post))] as const])));
  return (fence, span) => {
    if (span.end.kind !== 'joint') return 0;
    if (fence.spans.indexOf(span) < fence.spans.length - 1) return fence.section.rows.length;
    const beyond = next.get(keyOf(fence));
    if (beyond?.brief.construction !== 'lapped') return 0;
    return fence.section.rows.filter((row) => beyond.section.rows.some((other) => Math.abs(other - row) < SAME_LENGTH)).length;
  };
}

/** Round, or the two sides of a tube. */
export const perimeter = ({ shape, across, along }: Section): number => (shape === 'round' ? Math.PI * across : 2 * (across + along));

function lappedLots(brief: Brief, fence: Fence, rails: readonly Piece[], goesOn: GoesOn): readonly WeldLot[] {
  if (rails.length === 0) return [];
  const { rail, post } = fence.brief;
  const rows = fence.section.rows.length;
  // Where a row goes on beyond a shared post, that crossing is the downstream rail's.
  const ends = fence.spans.reduce((sum, span) => sum + goesOn(fence, span), 0);
  const crossings = fence.spans.reduce((sum, { posts }) => sum + posts.length * rows, 0) - ends;
  const crossing = lappedWeld(brief, rail, post);
  const size = crossing.symbol.arrow!.size!;
  const mitres = rails.flatMap(({ ends }) => ends).flatMap((end) => (end.kind === 'mitre' || end.kind === 'slope-mitre' ? [Math.abs(end.angle)] : []));
  const splices = rails.length - fence.spans.length * rows + ends - mitredJoints(fence.spans, rails);
  const { weldGap } = brief.shop;
  const splice = buttWeld(brief, 'rail-splice', rail.wall, weldGap, true);
  const area = squareArea(rail.wall, weldGap, WELD_PRACTICE.leastGap);
  // Both pieces of a mitre say so: half of it each.
  const stretch = mitres.reduce((sum, angle) => sum + (rail.shape === 'round' ? ellipseLength(rail.across / 2, rail.across / 2 / Math.cos(angle)) : perimeter(rail) / Math.cos(angle)) / 2, 0);
  return [
    crossingLot(fence, crossing, crossings, size),
    ...(splices > 0 ? [lotOf(fence.run, splice, splices, perimeter(rail), area)] : []),
    ...(mitres.length > 0 ? [{ weld: { ...splice, joint: 'rail-mitre' as const }, run: fence.run, count: mitres.length / 2, length: stretch, volume: stretch * area }] : []),
  ];
}

/** Joints in line with the next span that are mitred (where a slope breaks) are no plain butts. */
const mitredJoints = (spans: readonly Span[], rails: readonly Piece[]): number =>
  spans.length < 2 ? 0 : rails.filter(({ ends }) => ends[1].kind === 'slope-mitre').length;

function crossingLot(fence: Fence, weld: WeldLot['weld'], count: number, size: number): WeldLot {
  const { rail, post } = fence.brief;
  const [r, p] = [rail.along / 2, post.across / 2];
  if (rail.shape === 'round' && post.shape === 'round') {
    const one = crossedRounds(p, r, size);
    return { weld, run: fence.run, count, length: count * one.length, volume: count * one.volume };
  }
  if (rail.shape === 'rectangular' && post.shape === 'rectangular') return lotOf(fence.run, weld, count, 2 * (rail.along + post.along), filletArea(size));
  // The touch runs the rail's height on a round post, the post's width under a round rail.
  const [line, radius] = rail.shape === 'round' ? [post.along, r] : [rail.along, p];
  return lotOf(fence.run, weld, count, 2 * line, flareArea(radius, size));
}

function copedLots(brief: Brief, fence: Fence, rails: readonly Piece[]): readonly WeldLot[] {
  const { rail, post } = fence.brief;
  const weld = copedWeld(brief, rail, post);
  const area = filletArea(weld.symbol.arrow!.size!);
  const groups = new Map<string, { readonly each: number; count: number }>();
  for (const end of rails.flatMap(({ ends }) => ends)) {
    const name = JSON.stringify(end);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, { each: endLength(end, rail), count: 1 });
    else group.count += 1;
  }
  return [...groups.values()].map(({ each, count }) => lotOf(fence.run, weld, count, each, area));
}

/** All round a bar's end, as it is cut. */
export function endLength(end: EndCut, bar: Section): number {
  const r = bar.across / 2;
  switch (end.kind) {
    case 'cope':
      return saddleLength(r, end.postRadius, Math.PI / 2);
    case 'slope-cope':
      return saddleLength(r, end.postRadius, Math.PI / 2 - end.slope);
    case 'mitre':
    case 'slope-mitre':
      return bar.shape === 'round' ? ellipseLength(r, r / Math.cos(end.angle)) : perimeter(bar) / Math.cos(end.angle);
    case 'square':
    case 'plumb':
      return perimeter(bar);
  }
}

function skinLots(brief: Brief, fence: Fence, skins: readonly Piece[]): readonly WeldLot[] {
  const [first] = skins;
  const { sheet, rail, construction } = fence.brief;
  if (first === undefined || sheet === null) return [];
  const seams = skins.flatMap(({ length, place }) => (place.kind !== 'skin' ? [] : fence.section.rows
    .filter((row) => row >= place.bottom - fence.section.railHeight / 2 && row <= place.top + fence.section.railHeight / 2).map(() => length as number)));
  const weld = skinWeld(brief, fence);
  const laid = filletLot(fence.run, weld, seams);
  const size = weld.symbol.arrow!.size!;
  const flare = construction === 'lapped' && rail.shape === 'round';
  const butts = edgesTwice(skins);
  const seam = seamWeld(brief, sheet.thickness);
  const { length, pitch } = seam.symbol.arrow!;
  const ground = butts.reduce((sum, tall) => sum + (length === null || pitch === null ? tall : stitchedLength(tall, length, pitch)), 0);
  return [
    flare ? { ...laid, volume: laid.length * flareArea(rail.along / 2, size) } : laid,
    ...(butts.length > 0 ? [{ weld: seam, run: fence.run, count: butts.length, length: ground, volume: ground * squareArea(sheet.thickness, 0, WELD_PRACTICE.leastGap) }] : []),
  ].filter(({ count }) => count > 0);
}

/** Heights of the upright seams: where one skin of a course ends and the next begins. */
function edgesTwice(skins: readonly Piece[]): readonly number[] {
  const places = skins.flatMap(({ place }) => (place.kind === 'skin' ? [place] : []));
  const starts = new Set(places.map(({ from, bottom }) => `${from.toFixed(4)} ${bottom.toFixed(4)}`));
  return places.filter(({ to, bottom }) => starts.has(`${to.toFixed(4)} ${bottom.toFixed(4)}`)).map(({ bottom, top }) => top - bottom);
}

function plateLots(brief: Brief, fence: Fence, plates: readonly Piece[]): readonly WeldLot[] {
  return plates.flatMap(({ flatHeight, place }) => {
    if (place.kind !== 'plate' || flatHeight === null || flatHeight < SAME_LENGTH) return [];
    const { rail } = fence.brief;
    const { rows, railHeight } = fence.section;
    const thickness = inches(0.25);
    const met = rows.filter((row) => row >= place.bottom && row <= place.top);
    return [
      filletLot(fence.run, plateWeld(brief, 'plate-post', thickness, brief.crowdPen.pivotPost.wall), [flatHeight]),
      ...(met.length === 0 ? [] : [filletLot(fence.run, plateWeld(brief, 'plate-rail', thickness, rail.wall), met.map(() => railHeight))]),
    ];
  });
}
