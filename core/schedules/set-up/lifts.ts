/** What is lifted as one: gates' leaves, shop-built panels, and single pieces too heavy for one person; each against the truck's bed. */
import { inches, pounds, type Inches, type Pounds } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief, type TruckBrief } from '../../brief/types.ts';
import { type Layout } from '../../layout/index.ts';
import { chord, gateMarks, rise, type Parts, type Piece } from '../../parts/index.ts';
import { SET_UP_PRACTICE } from './practice.ts';

export interface Lift {
  readonly what: 'gate' | 'panel' | 'piece';
  /** A gate's or a piece's mark; of a panel the marks of what it is made of. */
  readonly marks: readonly string[];
  readonly count: number;
  readonly long: Inches;
  readonly high: Inches;
  /** How deep it is as it lies: the rise of a rolled one and its thickness. */
  readonly deep: Inches;
  readonly weight: Pounds;
  /** By hand; null: with a loader or a hoist. */
  readonly people: number | null;
  readonly truck: 'fits' | 'too-long' | 'too-wide' | 'too-heavy';
}

type Size = Pick<Lift, 'what' | 'marks' | 'long' | 'high' | 'deep' | 'weight'>;

export function lifts(brief: Brief, layout: Layout, parts: Parts): readonly Lift[] {
  const found = new Map<string, { readonly size: Size; count: number }>();
  for (const size of [...leaves(layout, parts), ...panels(layout, parts), ...singles(brief, layout, parts)]) {
    const key = JSON.stringify([size.what, size.marks]);
    const one = found.get(key);
    if (one === undefined) found.set(key, { size, count: 1 });
    else one.count += 1;
  }
  return [...found.values()].map(({ size, count }) => {
    const people = Math.max(1, Math.ceil(size.weight / brief.shop.handLift - SAME_LENGTH));
    return { ...size, count, people: people > SET_UP_PRACTICE.mostPeople ? null : people, truck: onTruck(brief.shop.truck, size) };
  });
}

/** Flat on the bed, its length along it. */
function onTruck(truck: TruckBrief, { long, high, weight }: Size): Lift['truck'] {
  if (long > truck.length + SAME_LENGTH) return 'too-long';
  if (high > truck.width + SAME_LENGTH) return 'too-wide';
  return weight > truck.load ? 'too-heavy' : 'fits';
}

const total = (pieces: readonly Piece[]): Pounds => pounds(pieces.reduce((sum, { weight }) => sum + weight, 0));

/** Each gate's leaf. */
function leaves(layout: Layout, parts: Parts): readonly Size[] {
  return [...gateMarks(layout)].flatMap(([path, mark]): readonly Size[] => {
    const moving = parts.pieces.filter(({ place }) => place.kind === 'gate' && place.gate === path && place.moves);
    const points = moving.flatMap(({ place }) => {
      if (place.kind !== 'gate') return [];
      const { outline } = place;
      if (outline.kind === 'plate') return [{ x: outline.left as number, y: outline.bottom as number }, { x: outline.right as number, y: outline.top as number }];
      const r = outline.size / 2;
      return [outline.a, outline.b].flatMap(({ x, y }) => [{ x: x - r, y: y - r }, { x: x + r, y: y + r }]);
    });
    if (points.length === 0) return [];
    const span = (of: (p: { readonly x: number; readonly y: number }) => number): Inches => inches(Math.max(...points.map(of)) - Math.min(...points.map(of)));
    return [{ what: 'gate', marks: [mark], long: span(({ x }) => x), high: span(({ y }) => y), deep: inches(0), weight: total(moving) }];
  });
}

/** Coped fences come as panels of a bay: its rails, and the share of its skins. */
function panels(layout: Layout, parts: Parts): readonly Size[] {
  const bays = new Map<string, { readonly rails: Piece[]; skins: number; readonly height: number }>();
  const coped = new Map(layout.fences.filter(({ brief }) => brief.construction === 'coped').map((fence) => [`${fence.run} ${fence.side}`, fence]));
  for (const piece of parts.pieces) {
    const fence = coped.get(`${piece.run} ${piece.side}`);
    if (fence === undefined || (piece.place.kind !== 'rail' && piece.place.kind !== 'skin')) continue;
    for (let bay = piece.bay; bay < piece.bay + piece.bays; bay += 1) {
      const key = `${piece.run} ${piece.side} ${String(bay)}`;
      const one = bays.get(key) ?? { rails: [], skins: 0, height: fence.section.rows[fence.section.rows.length - 1]! - fence.section.rows[0]! + fence.section.railHeight };
      if (piece.place.kind === 'rail') one.rails.push(piece);
      else one.skins += piece.weight / piece.bays;
      bays.set(key, one);
    }
  }
  return [...bays.values()].flatMap(({ rails, skins, height }): readonly Size[] => {
    const [first] = rails;
    if (first === undefined) return [];
    return [{ what: 'panel', marks: [...new Set(rails.map(({ mark }) => mark))], ...flat(first), high: inches(height), weight: pounds(total(rails) + skins) }];
  });
}

/** As it lies: a rolled piece by its chord and rise. */
function flat({ length, bend }: Piece): Pick<Size, 'long' | 'deep'> {
  if (bend === null) return { long: length, deep: inches(0) };
  return { long: inches(chord(bend.radius, bend.angle)), deep: inches(rise(bend.radius, bend.angle)) };
}

/** Pieces that one person can't lift alone, of lapped fences and everything else that is set piece by piece. */
function singles(brief: Brief, layout: Layout, parts: Parts): readonly Size[] {
  const coped = new Set(layout.fences.filter((fence) => fence.brief.construction === 'coped').map(({ run, side }) => `${run} ${side}`));
  return parts.pieces
    .filter(({ kind, place, run, side }) => place.kind !== 'gate' && kind !== 'deck' && kind !== 'cleat' && !(coped.has(`${run} ${side}`) && (kind === 'rail' || kind === 'skin')))
    .filter(({ weight }) => weight > brief.shop.handLift)
    .map((piece) => ({ what: 'piece', marks: [piece.mark], ...flat(piece), high: piece.flatHeight ?? inches(0), weight: piece.weight }));
}
