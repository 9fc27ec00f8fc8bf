import { boundsTouch, curveBounds, joinBounds, pointBounds, type Bounds } from '../../base/bounds.ts';
import { crossings } from '../../base/crossing.ts';
import { type Curve } from '../../base/curve.ts';
import { cross, distance, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { TAPE } from '../../base/tolerance.ts';
import { distanceToFace } from '../openings/distance-to-face.ts';
import { faceCurve, facePoint } from '../fence-points.ts';
import { type Join } from '../fouls/join.ts';
import { type Fence, type Foul, type Post } from '../types.ts';
import { type Catwalk } from './types.ts';

/** A deck's part or a flight of steps, drawn in by a tape's sixteenth so that what only touches it is none. */
interface Patch {
  readonly run: string;
  readonly corners: readonly Vec[];
  readonly edges: readonly Curve<Vec>[];
  readonly bounds: Bounds;
}

interface Ground {
  readonly fences: readonly Fence[];
  readonly joins: readonly Join[];
  /** Posts that no fence's own band holds: the pivot post. */
  readonly posts: readonly Post[];
}

/** Decks and steps that stand in a fence that is not their own, in the pivot post, or in another catwalk; each pair once. */
export function deckFouls(catwalks: readonly Catwalk[], ground: Ground): readonly Foul[] {
  const patched = catwalks.map((catwalk) => ({ catwalk, patches: patchesOf(catwalk) }));
  const bands = catwalks.length === 0 ? [] : ground.fences.map((fence) => ({ fence, ...bandOf(fence) }));
  return patched.flatMap(({ catwalk, patches }, i) => {
    const found = new Map<string, { readonly at: Vec; readonly runs: readonly string[]; count: number }>();
    const tell = (patch: Patch, other: string, name: string, at: Vec | null): void => {
      if (at === null) return;
      const known = found.get(name);
      if (known === undefined) found.set(name, { at, runs: [patch.run, other], count: 1 });
      else known.count += 1;
    };
    const own = new Set(catwalk.stretches.map(({ run }) => run));
    const all = joinBounds(patches.map(({ bounds }) => bounds));
    for (const { fence, outline, bounds } of bands) {
      if ((own.has(fence.run) && fence.side === catwalk.side) || !boundsTouch(bounds, all)) continue;
      const joins = joinAreas(fence, catwalk, own, ground.joins);
      for (const patch of patches) if (boundsTouch(patch.bounds, bounds)) tell(patch, fence.run, `${fence.run} ${fence.side}`, fencePlace(patch, outline, joins));
    }
    for (const post of ground.posts) {
      for (const patch of patches) tell(patch, post.run, 'pivot', nearer(patch, post.at, Math.max(post.section.across, post.section.along) / 2) ? post.at : null);
    }
    for (const { catwalk: other, patches: others } of patched.slice(i + 1)) {
      for (const patch of patches) for (const against of others) tell(patch, against.run, other.path, patchPlace(patch, against));
    }
    return [...found].map(([name, { at, runs, count }]): Foul =>
      ({ kind: 'foul-fence', at: at as PlanPoint, measured: count, runs, deck: { path: catwalk.path, other: name.startsWith('catwalks') ? name : null } }));
  });
}

const patchesOf = (catwalk: Catwalk): readonly Patch[] => [
  ...catwalk.stretches.flatMap(({ run, parts }) => parts.map(({ corners }) => patchOf(run, corners))),
  ...catwalk.flights.filter(({ length }) => length > TAPE).map(({ run, corners }) => patchOf(run, corners)),
];

function patchOf(run: string, outer: readonly Vec[]): Patch {
  const middle = { x: outer.reduce((sum, { x }) => sum + x, 0) / outer.length, y: outer.reduce((sum, { y }) => sum + y, 0) / outer.length };
  const corners = outer.map((p) => {
    const away = distance(p, middle);
    const share = away > TAPE ? TAPE / away : 0;
    return { x: p.x + (middle.x - p.x) * share, y: p.y + (middle.y - p.y) * share };
  });
  const edges = corners.map((a, i): Curve<Vec> => ({ kind: 'line', a, b: corners[(i + 1) % corners.length]! }));
  return { run, corners, edges, bounds: pointBounds(corners) };
}

/** A fence as it takes up ground: from its face to the backs of its posts. */
function bandOf(fence: Fence): { readonly outline: readonly Curve<PlanPoint>[]; readonly bounds: Bounds } {
  const from = fence.spans[0]!.posts[0]!;
  const to = fence.spans[fence.spans.length - 1]!.posts.at(-1)!;
  const back = thickness(fence);
  const edge = (u: number): Curve<PlanPoint> => ({ kind: 'line', a: facePoint(fence, u, 0), b: facePoint(fence, u, back) });
  const outline = [faceCurve(fence, from, to, 0), faceCurve(fence, from, to, back), edge(from), edge(to)];
  return { outline, bounds: joinBounds(outline.map(curveBounds)) };
}

const thickness = ({ section: { k, D } }: Fence): number => k + D / 2;

/** Where a fence that goes on from the deck's own may touch the deck's end: about their join. */
function joinAreas(fence: Fence, catwalk: Catwalk, own: ReadonlySet<string>, joins: readonly Join[]): readonly { readonly at: Vec; readonly radius: number }[] {
  const isOwn = (one: Fence): boolean => own.has(one.run) && one.side === catwalk.side;
  return joins.filter(({ upstream, downstream }) => (upstream === fence && isOwn(downstream)) || (downstream === fence && isOwn(upstream)))
    .map(({ upstream, downstream }) => ({ at: facePoint(downstream, 0, 0), radius: 2 * Math.max(thickness(upstream), thickness(downstream)) + TAPE }));
}

function fencePlace(patch: Patch, outline: readonly Curve<Vec>[], joins: readonly { readonly at: Vec; readonly radius: number }[]): Vec | null {
  for (const edge of patch.edges) {
    for (const curve of outline) {
      const place = crossings(edge, curve).find((p) => joins.every(({ at, radius }) => distance(p, at) > radius));
      if (place !== undefined) return place;
    }
  }
  return null;
}

/** Whether a point lies in a convex patch. */
export function holdsPoint(corners: readonly Vec[], p: Vec): boolean {
  const sides = corners.map((a, i) => Math.sign(cross(sub(corners[(i + 1) % corners.length]!, a), sub(p, a))));
  return sides.every((side) => side >= 0) || sides.every((side) => side <= 0);
}

const nearer = (patch: Patch, at: Vec, reach: number): boolean =>
  holdsPoint(patch.corners, at) || patch.edges.some((edge) => distanceToFace(edge, at) < reach);

function patchPlace(a: Patch, b: Patch): Vec | null {
  if (!boundsTouch(a.bounds, b.bounds)) return null;
  for (const edge of a.edges) for (const other of b.edges) {
    const [place] = crossings(edge, other);
    if (place !== undefined) return place;
  }
  return a.corners.find((p) => holdsPoint(b.corners, p)) ?? b.corners.find((p) => holdsPoint(a.corners, p)) ?? null;
}
