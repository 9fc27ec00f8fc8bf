/** What stands in one fence: its posts, rails and skins by bay, found once for all its drawings. */
import { SAME_LENGTH } from '../base/tolerance.ts';
import { type Fence, isJambedGate, jambOffset, type Layout, lengthAtOffset } from '../layout/index.ts';
import { gateMarks, type Parts, type Piece } from '../parts/index.ts';

export interface FencePost {
  readonly u: number;
  readonly piece: Piece;
  /** The plate on its open top; null where something else stands on it. */
  readonly cap: Piece | null;
  /** Height of its top over the ground. */
  readonly top: number;
  /** Its size outward and along the fence, and its center from the face: a gate may hang on a thicker one than the fence's own. */
  readonly across: number;
  readonly along: number;
  readonly offset: number;
}
export interface FenceParts {
  readonly fence: Fence;
  readonly posts: readonly FencePost[];
  readonly rails: readonly Piece[];
  readonly skins: readonly Piece[];
  /** Gates between jambs, by their middle on the face, with their names. */
  readonly gates: readonly { readonly mark: string; readonly u: number; readonly width: number }[];
  /** From u to inches along the rail axis, on which the elevation is rolled out. */
  x(u: number): number;
}

const postKey = (run: string, side: string, bay: number): string => `${run} ${side} ${String(bay)}`;

/** Every fence with its own pieces; a shared post stands in both fences. */
export function fenceParts(layout: Layout, parts: Parts): FenceParts[] {
  const byFence = new Map<string, Piece[]>();
  const posts = new Map<string, Piece>();
  const caps = new Map<string, Piece>();
  for (const piece of parts.pieces) {
    const key = `${piece.run} ${piece.side}`;
    const list = byFence.get(key);
    if (list === undefined) byFence.set(key, [piece]);
    else list.push(piece);
    if (piece.kind === 'post') posts.set(postKey(piece.run, piece.side, piece.bay), piece);
    if (piece.place.kind === 'cap') caps.set(piece.place.on, piece);
  }
  const own = new Map<string, Pick<FencePost, 'u' | 'piece' | 'cap' | 'top'>[]>();
  const stand = (run: string, side: string, u: number, piece: Piece, top: number): void => {
    const key = `${run} ${side}`;
    const post = { u, piece, cap: caps.get(piece.key) ?? null, top };
    const list = own.get(key);
    if (list === undefined) own.set(key, [post]);
    else list.push(post);
  };
  for (const post of layout.posts) {
    if (post.kind === 'pivot-post') continue;
    const piece = posts.get(postKey(post.run, post.side, post.bay));
    if (piece === undefined) throw new Error(`no piece for the post at bay ${String(post.bay)} of ${post.run} ${post.side}`);
    stand(post.run, post.side, post.u, piece, post.fenceHeight);
    if (post.alsoEnds !== null) stand(post.alsoEnds.run, post.alsoEnds.side, post.alsoEnds.u, piece, post.fenceHeight);
  }
  const names = gateMarks(layout);
  return layout.fences.map((fence) => {
    const key = `${fence.run} ${fence.side}`;
    const mine = byFence.get(key) ?? [];
    return {
      fence,
      posts: (own.get(key) ?? []).map((post) => ({ ...post, ...sizeOf(fence, post.u) })).sort((a, b) => a.u - b.u),
      rails: mine.filter((piece) => piece.kind === 'rail'),
      skins: mine.filter((piece) => piece.kind === 'skin'),
      gates: layout.openings.flatMap((one) =>
        (isJambedGate(one) && one.run === fence.run && one.side === fence.side ? [{ mark: names.get(one.path)!, u: one.u, width: one.width }] : [])),
      x: (u) => lengthAtOffset(fence, 0, u, fence.section.kr),
    };
  });
}

/** Of the fence's own post, or of the one that a gate hangs on. */
function sizeOf(fence: Fence, u: number): Pick<FencePost, 'across' | 'along' | 'offset'> {
  const { section: { D, k }, brief, spans } = fence;
  for (const { start, end, posts, thick = [] } of spans) {
    const ends = [[start, posts[0]!], [end, posts[posts.length - 1]!]] as const;
    const hung = ends.flatMap(([one, at]) => (one.kind === 'jamb' && one.post !== undefined ? [{ u: at, post: one.post }] : []));
    const own = [...hung, ...thick].find((one) => Math.abs(one.u - u) < SAME_LENGTH)?.post;
    if (own !== undefined) return { across: own.across, along: own.along, offset: jambOffset(fence, own) };
  }
  return { across: D, along: brief.post.along, offset: k };
}
