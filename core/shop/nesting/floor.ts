import { type Vec } from '../../base/points.ts';
import { NEST_TOUCH, SAME_LENGTH } from '../../base/tolerance.ts';
import { apart, convex, type Convex } from './apart.ts';
import { type Mold } from './mold.ts';
import { pointHeap, type PointHeap } from './point-heap.ts';

/** A sheet that is being filled. */
export interface Floor {
  /** The leftmost place, of those the lowest, where a mold's lower left corner may stand; null: none is left. */
  placeFor(mold: Mold): Vec | null;
  put(mold: Mold, at: Vec): void;
}

/** Where a mold may still stand: every place so far that could be the leftmost, those that are known to be none dropped. */
interface Ground {
  readonly wide: number;
  readonly high: number;
  taken: Convex[];
  readonly places: PointHeap;
  /** No place before this one is free: parts are only ever added. */
  front: Vec;
  /** Of the parts put so far, how many are in `taken`. */
  known: number;
}

/** Keeps the places at which one mold stands too near to another: they are asked for again and again. */
export type Spacer = (fixed: Mold, moving: Mold) => readonly Convex[];

export function makeSpacer(spacing: number): Spacer {
  const kept = new Map<Mold, Map<Mold, readonly Convex[]>>();
  return (fixed, moving) => {
    let row = kept.get(fixed);
    if (row === undefined) kept.set(fixed, row = new Map());
    let found = row.get(moving);
    if (found === undefined) row.set(moving, found = fixed.parts.flatMap((a) => moving.parts.map((b) => apart(a, b, spacing))));
    return found;
  };
}

/**
 * An empty floor. The leftmost free place of a part among others is a corner of what is taken, a crossing of two of its edges, or one of
 * an edge and the border; as parts are only ever added, a place that is taken once stays so, and each new part brings only its own
 * corners and crossings.
 */
export function makeFloor(long: number, short: number, spacer: Spacer): Floor {
  const put: { readonly mold: Mold; readonly at: Vec }[] = [];
  const grounds = new Map<Mold, Ground | null>();
  const groundOf = (mold: Mold): Ground | null => {
    const known = grounds.get(mold);
    if (known !== undefined) return known;
    const [wide, high] = [long - mold.width, short - mold.height];
    const ground = wide < -SAME_LENGTH || high < -SAME_LENGTH ? null : { wide: Math.max(0, wide), high: Math.max(0, high), taken: [], places: pointHeap(), front: { x: 0, y: 0 }, known: 0 };
    if (ground !== null) for (const x of [0, ground.wide]) for (const y of [0, ground.high]) ground.places.add({ x, y });
    grounds.set(mold, ground);
    return ground;
  };
  return {
    placeFor: (mold) => {
      const ground = groundOf(mold);
      if (ground === null) return null;
      for (; ground.known < put.length; ground.known++) {
        const { mold: fixed, at } = put[ground.known]!;
        for (const shape of spacer(fixed, mold)) take(ground, convex(shape.points.map(({ x, y }) => ({ x: x + at.x, y: y + at.y }))));
      }
      return firstFree(ground);
    },
    put: (mold, at) => { put.push({ mold, at }); },
  };
}

/** The first free place, those before it dropped, and all that lies before it with them. */
function firstFree(ground: Ground): Vec | null {
  let last: Vec | null = null;
  for (let at = ground.places.first(); at !== null; at = ground.places.first()) {
    if ((last === null || at.x !== last.x || at.y !== last.y) && isFree(ground, at)) {
      ground.front = at;
      ground.taken = ground.taken.filter(({ right }) => right > at.x);
      return at;
    }
    last = at;
    ground.places.dropFirst();
  }
  return null;
}

/** Adds what is taken, and the places that its corners and crossings make. */
function take(ground: Ground, shape: Convex): void {
  const { wide, high } = ground;
  const { front } = ground;
  if (shape.left > wide || shape.right < front.x || shape.low > high || shape.high < 0) return;
  const add = (x: number, y: number): void => {
    if (x < front.x - NEST_TOUCH || y < -NEST_TOUCH || x > wide + NEST_TOUCH || y > high + NEST_TOUCH) return;
    ground.places.add({ x: Math.min(wide, Math.max(0, x)), y: Math.min(high, Math.max(0, y)) });
  };
  const { points } = shape;
  for (const [i, a] of points.entries()) {
    const b = points[(i + 1) % points.length]!;
    add(a.x, a.y);
    for (const x of [0, wide]) if ((a.x - x) * (b.x - x) < 0) add(x, a.y + ((b.y - a.y) * (x - a.x)) / (b.x - a.x));
    for (const y of [0, high]) if ((a.y - y) * (b.y - y) < 0) add(a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y), y);
    for (const other of ground.taken) {
      if (other.left > Math.max(a.x, b.x) || other.right < Math.min(a.x, b.x) || other.low > Math.max(a.y, b.y) || other.high < Math.min(a.y, b.y)) continue;
      crossings(a, b, other.points, add);
    }
  }
  ground.taken.push(shape);
}

function crossings(a: Vec, b: Vec, ring: readonly Vec[], add: (x: number, y: number) => void): void {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  for (let i = 0; i < ring.length; i++) {
    const [c, d] = [ring[i]!, ring[i + 1 === ring.length ? 0 : i + 1]!];
    const [ex, ey] = [d.x - c.x, d.y - c.y];
    const turn = dx * ey - dy * ex;
    if (turn === 0) continue;
    const along = ((c.x - a.x) * ey - (c.y - a.y) * ex) / turn;
    const across = ((c.x - a.x) * dy - (c.y - a.y) * dx) / turn;
    if (along < -SHARE || along > 1 + SHARE || across < -SHARE || across > 1 + SHARE) continue;
    add(a.x + dx * along, a.y + dy * along);
  }
}

/** A share of an edge by which a crossing may lie past its end, so that rounding loses none. */
const SHARE = 1e-9;

const isFree = ({ taken }: Ground, at: Vec): boolean => !taken.some((shape) => liesIn(shape, at));

/** Whether a place lies inside a convex polygon, deeper than a touch. */
function liesIn({ points, left, right, low, high }: Convex, { x, y }: Vec): boolean {
  if (x <= left + NEST_TOUCH || x >= right - NEST_TOUCH || y <= low + NEST_TOUCH || y >= high - NEST_TOUCH) return false;
  for (let i = 0; i < points.length; i++) {
    const [a, b] = [points[i]!, points[i + 1 === points.length ? 0 : i + 1]!];
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    const reach = Math.abs(dx) + Math.abs(dy);
    if (dx * (y - a.y) - dy * (x - a.x) <= NEST_TOUCH * reach) return false;
  }
  return true;
}
