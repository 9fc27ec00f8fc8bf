import { SAME_LENGTH } from '../../base/tolerance.ts';
import { inches } from '../../base/quantity.ts';
import { hingePostOf } from '../../brief/gate-steel.ts';
import { type FenceLine } from '../fence-line.ts';
import { facePoint } from '../fence-points.ts';
import { type Stop } from '../stop.ts';
import { type Foul } from '../types.ts';
import { cutPosts, gapCut, leastApart, spare, type Cut } from './cuts.ts';
import { type Spot } from './spots.ts';

/** The two ends of a fence before any opening parts it. */
export interface Ends {
  readonly start: Stop;
  readonly end: Stop;
}

export interface Fitted {
  /** Openings that stand. */
  readonly spots: readonly Spot[];
  readonly cuts: ReadonlyMap<FenceLine, readonly Cut[]>;
  /** Openings that are left out of the fence, and why. */
  readonly fouls: readonly Foul[];
}

/**
 * Fits the openings into their fences in the order of the brief. One that lies over another, or over the end of its run, is left out
 * and is a foul: nothing could be built of it as it stands.
 */
export function fitOpenings(spots: readonly Spot[], endsOf: (line: FenceLine) => Ends): Fitted {
  const stand: Spot[] = [];
  const fouls: Foul[] = [];
  const taken = new Map<FenceLine, { readonly cut: Cut; readonly path: string }[]>();
  for (const spot of spots) {
    const cuts = spot.places.map(({ line, u }) => ({ line, cut: cutOf(spot, line, u) }));
    const found = cuts.map(({ line, cut }) => foulOf(spot, line, cut, endsOf(line), taken.get(line) ?? [])).filter((one) => one !== null);
    if (found.length > 0) {
      // Of a backstop's two sides the worse one, so that a mirrored facility tells the same.
      fouls.push(found.reduce((worst, one) => (one.measured > worst.measured ? one : worst)));
      continue;
    }
    stand.push(spot);
    for (const { line, cut } of cuts) taken.set(line, [...(taken.get(line) ?? []), { cut, path: spot.opening.path }]);
  }
  const cuts = new Map([...taken].map(([line, list]) => [line, list.map(({ cut }) => cut).sort((a, b) => cutPosts(a)[0] - cutPosts(b)[0])]));
  return { spots: stand, cuts, fouls };
}

function cutOf({ opening }: Spot, line: FenceLine, u: number): Cut {
  switch (opening.kind) {
    case 'man-gate':
      return gapCut(line, u, opening.width, null);
    case 'pen-gate':
      return gapCut(line, u, opening.width, { at: opening.hangs, section: hingePostOf(line.brief, opening) });
    case 'backstop':
      return { kind: 'post', at: inches(u) };
    case 'alley-gate': {
      const post = opening.side === line.side ? hingePostOf(line.brief, opening) : line.brief.post;
      return { kind: 'post', at: inches(u), ...(post === line.brief.post ? {} : { post }) };
    }
  }
}

/** Why a cut cannot stand: too near to an end of its fence or to another opening. `measured` is by how much. */
function foulOf(spot: Spot, line: FenceLine, cut: Cut, ends: Ends, taken: readonly { readonly cut: Cut; readonly path: string }[]): Foul | null {
  const [from, to] = cutPosts(cut);
  const apart = leastApart(line) + spare(line, cut);
  const low = Math.max(ends.start.post, ends.start.rail, ends.start.skin) + apart;
  const high = Math.min(ends.end.post, ends.end.rail, ends.end.skin) - apart;
  const short = onPost(cut, ends) ? 0 : Math.max(low - from, to - high);
  const place = (measured: number, other: string | null): Foul => {
    const { u } = spot.places.find((one) => one.line === line)!;
    return { kind: 'foul-opening', at: facePoint(line, u, 0), measured, runs: [line.run, line.run], openings: { path: spot.opening.path, other } };
  };
  if (short > SAME_LENGTH) return place(short, null);
  for (const other of taken) {
    const [first, last] = cutPosts(other.cut);
    const both = apart + spare(line, other.cut);
    const over = Math.min(last + both - from, to + both - first);
    if (over > SAME_LENGTH) return place(over, other.path);
  }
  return null;
}

/** A backstop at a run's end takes the post that stands there. */
function onPost(cut: Cut, { start, end }: Ends): boolean {
  return cut.kind === 'post' && [start, end].some((stop) => (stop.end.kind === 'joint' || stop.end.kind === 'free') && Math.abs(stop.post - cut.at) < SAME_LENGTH);
}
