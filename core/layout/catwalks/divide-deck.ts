import { inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { SAME_ANGLE, SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { type Fence } from '../types.ts';
import { bayAt } from './bay-at.ts';
import { chordAside, deckPoint, mostAngle } from './deck-shape.ts';
import { type Grade } from './grade.ts';
import { type DeckEnd, type DeckPart } from './types.ts';

/** A stretch to be divided: at which ends of it the deck begins or ends with a landing, and whether a part of a length may be made. */
export interface Divided {
  readonly fence: Fence;
  readonly from: Inches;
  readonly to: Inches;
  readonly width: Inches;
  readonly landings: readonly DeckEnd[];
  readonly grade: Grade;
  /** Of the deck over the grade. */
  readonly deckHeight: Inches;
  /** Whether steel for a part whose longer edge is so long can be had. */
  readonly fits: (edge: number, slope: Radians) => boolean;
}

/** Parts beyond which a bay is not tried: the shop has no sheet for it then. */
const MOST_PARTS = 400;

/**
 * The parts of a deck along one fence, in walking order: one a bay or more, none across a break of the slope, landings by themselves and
 * level. Null where no part can be had.
 */
export function divideDeck({ fence, from, to, width, landings, grade, deckHeight, fits }: Divided): readonly DeckPart[] | null {
  const room = (to - from) / landings.length;
  const all = fence.spans.flatMap((span) => span.posts);
  const breaks = grade.breaks.filter((u) => u > from + SAME_LENGTH && u < to - SAME_LENGTH);
  const least = landingLength(fence, width);
  const first = landings.includes('start') ? onPost(fence, all, from, from + Math.min(room, least, ...breaks.map((u) => u - from))) : from;
  const last = landings.includes('end') ? onPost(fence, all, to, to - Math.min(room, least, ...breaks.map((u) => to - u))) : to;
  const posts = all.filter((u) => u > first + CATWALK_PRACTICE.nearEnd && u < last - CATWALK_PRACTICE.nearEnd);
  const inner = [...posts, ...breaks.filter((u) => u > first && u < last)].toSorted((a, b) => a - b);
  const stops = [from, first, ...inner, last, to].filter((u, i, list) => i === 0 || u - list[i - 1]! > SAME_LENGTH);
  const parts: DeckPart[] = [];
  for (let i = 0; i < stops.length - 1; i++) {
    const [a, b] = [stops[i]!, stops[i + 1]!];
    const landing = landings.length === 0 ? null : a < first - SAME_LENGTH ? 'start' : b > last + SAME_LENGTH ? 'end' : null;
    const slope = grade.slope((a + b) / 2);
    const count = partsIn(fence, (b - a) / Math.cos(slope), width, (edge) => fits(edge, slope));
    if (count === null) return null;
    for (let n = 0; n < count; n++) parts.push(partOf(fence, [a + ((b - a) * n) / count, a + ((b - a) * (n + 1)) / count], width, landing, { grade, deckHeight, slope }));
  }
  return parts;
}

/** The inner end of a landing, on a post that stands a little beyond it where one part may be so long. */
function onPost(fence: Fence, posts: readonly number[], end: number, inner: number): number {
  const beyond = posts.find((u) => (u - inner) * Math.sign(inner - end) > 0 && Math.abs(u - inner) < CATWALK_PRACTICE.nearEnd);
  return beyond !== undefined && angleOver(fence, Math.abs(beyond - end)) <= mostAngle(fence) ? beyond : inner;
}

const angleOver = (fence: Fence, span: number): number => (fence.faceRadius === null ? 0 : span / fence.faceRadius);

/** As few equal parts of a bay as keep its rise and its steel within what they may be. */
function partsIn(fence: Fence, span: number, width: number, fits: (edge: number) => boolean): number | null {
  const angle = angleOver(fence, span);
  for (let count = Math.max(1, Math.ceil(angle / mostAngle(fence) - SAME_ANGLE)); count <= MOST_PARTS; count++) {
    const [own, long] = [angle / count, span / count];
    if (fits(Math.max(chordAside(fence, own, long, 0), chordAside(fence, own, long, width)))) return count;
  }
  return null;
}

/** Along the face, a landing whose open edge is as wide as the steps, no longer than one part may be. */
function landingLength(fence: Fence, width: number): number {
  const wide = CATWALK_PRACTICE.steps.width;
  if (fence.faceRadius === null) return wide;
  const most = mostAngle(fence);
  let angle = Math.min(most, wide / fence.faceRadius);
  // The open edge's distance from the center follows a little from the angle itself.
  for (let i = 0; i < 8; i++) angle = Math.min(most, 2 * Math.atan(wide / (chordAside(fence, angle, 0, width) / Math.tan(angle / 2))));
  return angle * fence.faceRadius;
}

interface Lie {
  readonly grade: Grade;
  readonly deckHeight: number;
  readonly slope: Radians;
}

function partOf(fence: Fence, [from, to]: readonly [number, number], width: number, landing: DeckEnd | null, { grade, deckHeight, slope }: Lie): DeckPart {
  const middle = (from + to) / 2;
  const angle = angleOver(fence, to - from);
  const at = (u: number, aside: number): ReturnType<typeof deckPoint> => deckPoint(fence, middle, angle, u, aside);
  const long = (to - from) / Math.cos(slope);
  return {
    from: inches(from), to: inches(to), bay: bayAt(fence, middle), angle: radians(angle), mitre: radians(angle / 2),
    near: chordAside(fence, angle, long, 0), far: chordAside(fence, angle, long, width), slope,
    heights: [inches(grade.height(from) + deckHeight), inches(grade.height(to) + deckHeight)],
    corners: [at(from, 0), at(to, 0), at(to, width), at(from, width)],
    landing,
  };
}
