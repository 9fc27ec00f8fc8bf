/** A stretch of fence rolled out flat on its rail axis: posts, rails, skins, their marks, running positions and heights. */
import { inches } from '../base/quantity.ts';
import { sheetPoint, viewPoint } from '../base/points.ts';
import { SAME_LENGTH } from '../base/tolerance.ts';
import { bandHeight, bandWidth } from '../drafting/band.ts';
import { PENS, measureText, printSize } from '../drafting/kit.ts';
import { type Band, type BandLabel, type CalloutSpec, type Shape, type View } from '../drafting/model.ts';
import { type Pen } from '../drafting/primitives.ts';
import { runningDepth } from '../drafting/running.ts';
import { footHeight } from '../drafting/view.ts';
import { type Piece } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { sayBays } from './say-bays.ts';
import { type Block } from './flow.ts';
import { type Page } from './input.ts';
import { type FenceParts } from './panel-parts.ts';
import { capShapes, postLabel } from './post-cap.ts';
import { type Scale } from './scales.ts';

/** How much of a post is drawn below the ground, inches: the rest is in the tables. */
const STUB = 8;
/** Where in its first bay a mark's leader drops: rails from the first figure on, skins at the last. */
const RAIL_AT = [0.3, 0.5, 0.66] as const;
const SKIN_AT = 0.84;

/** Half a post along the face is longer on the rail axis of an outer arc: by no more than this on the tightest that a brief allows. */
const ON_AXIS = 1.15;

/** A stretch of bays, posts `from` to `to` of the fence. */
export interface Stretch {
  readonly panel: FenceParts;
  readonly from: number;
  readonly to: number;
}

const line = (pen: Pen, x0: number, y0: number, x1: number, y1: number, piece?: string): Shape => ({
  kind: 'curve',
  curve: { kind: 'line', a: viewPoint(x0, y0), b: viewPoint(x1, y1) },
  pen,
  ...(piece === undefined ? {} : { piece }),
});

/** A rectangle whose left and right ends are drawn only where the piece really ends. */
function box(pen: Pen, x0: number, x1: number, y0: number, y1: number, ends: readonly [boolean, boolean], piece: string): Shape[] {
  const out = [line(pen, x0, y0, x1, y0, piece), line(pen, x0, y1, x1, y1, piece)];
  if (ends[0]) out.push(line(pen, x0, y0, x0, y1, piece));
  if (ends[1]) out.push(line(pen, x1, y0, x1, y1, piece));
  return out;
}

export function elevationBlock(page: Page, stretch: Stretch, scale: Scale): Block {
  const { kit } = page;
  const { panel } = stretch;
  const { fence } = panel;
  const x0 = panel.x(panel.posts[stretch.from]!.u);
  const x1 = panel.x(panel.posts[stretch.to]!.u);
  const heights = heightsOf(panel);
  const side = runningDepth(kit, 4 * kit.h, Math.max(...heights.map((value) => measureText(kit, printSize(kit, value))))) + 0.05;
  const places = panel.posts.slice(stretch.from + 1, stretch.to + 1).map((post) => panel.x(post.u));
  const longest = Math.max(...places.map((x) => measureText(kit, printSize(kit, x - x0))));
  const title = titleOf(stretch);
  const marks = bandOf(stretch, x0, x1).labels.reduce((sum, label) => sum + bandWidth(kit, label.text), 0);
  // A corner's rails and skin run on past its last post.
  const end = Math.max(x1, ...[...within(panel, panel.rails, x0, x1), ...within(panel, panel.skins, x0, x1)].map((seen) => seen.to));
  const width = Math.min(page.room.width, Math.max(side + Math.max((x1 - x0) * scale.scale + 4 * kit.h, (end - x0) * scale.scale + kit.h), 30 * kit.h, marks));
  const foot = footHeight(kit, { title, scaleText: scale.text }, page.block, width);
  // Heights that had to spread stand a little under the ground.
  const tall = topOf(panel) * scale.scale + kit.up;
  const spreadOut = (heights.length + 1) * (kit.up + kit.down + 2 * kit.clear + 0.006) - tall;
  const below = Math.max(STUB * scale.scale + runningDepth(kit, 2 * kit.h, longest), spreadOut);
  const height = foot + below + topOf(panel) * scale.scale + bandHeight(kit);
  return {
    width,
    height,
    label: say('drawings.fence.name', { run: fence.run, side: fence.side }),
    place: (x, y) => {
      const at = sheetPoint(x + side - x0 * scale.scale, y + foot + below);
      const view: View = {
        id: `elevation ${fence.run} ${fence.side} ${String(stretch.from + 1)}`,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at,
        box: { x, y, width, height },
        shapes: shapesOf(stretch, x0, x1),
        dimensions: [],
        runnings: [
          {
            along: 'x',
            datum: viewPoint(x0, 0),
            at: panel.posts.slice(stretch.from + 1, stretch.to + 1).map((post) => viewPoint(panel.x(post.u), 0)),
            line: STUB * scale.scale + 2 * kit.h,
          },
          { along: 'y', datum: viewPoint(x0, 0), at: heights.map((value) => viewPoint(x0, value)), line: 4 * kit.h, limits: [below, tall] },
        ],
        bands: [bandOf(stretch, x0, x1)],
        callouts: gateNotes(stretch, x0, x1, kit.units),
      };
      return { views: [view] };
    },
  };
}

/** The highest post: one that it shares with a taller fence stands over its own. */
const topOf = ({ fence, posts }: FenceParts): number => Math.max(fence.brief.height, ...posts.map(({ top }) => top));

/** A man gate's name and clear width in its opening: its leaf stands on a drawing of its own. */
function gateNotes({ panel }: Stretch, x0: number, x1: number, units: 'in' | 'mm'): CalloutSpec[] {
  return panel.gates.filter(({ u }) => panel.x(u) > x0 && panel.x(u) < x1).map(({ mark, u, width }) => ({
    text: say('drawings.gate.opening', { mark, width: printSize({ units }, width) }),
    target: viewPoint(panel.x(u), panel.fence.brief.height / 2), piece: null, toward: { x: 1, y: 0.3 }, layer: 'NOTES', optional: true,
  }));
}

/** Upper edges of the rails, and the skin's edges, ascending. */
function heightsOf(panel: FenceParts): number[] {
  const { section, brief } = panel.fence;
  const values = section.rows.map((row) => row + section.railHeight / 2);
  if (panel.skins.length > 0) values.push(brief.solidFrom, brief.solidTo);
  return [...new Set(values.map((value) => Math.round(value * 1e6) / 1e6))].filter((value) => value > SAME_LENGTH).sort((a, b) => a - b);
}

function titleOf(stretch: Stretch): string {
  const { fence } = stretch.panel;
  const first = stretch.panel.posts[stretch.from]!.piece.bay;
  return say(fence.side === 'right' ? 'drawings.elevation.right' : 'drawings.elevation.left', {
    run: fence.run,
    side: fence.side,
    bays: sayBays(stretch.from === 0 ? 1 : first, stretch.to),
  });
}

function shapesOf(stretch: Stretch, x0: number, x1: number): Shape[] {
  const { panel } = stretch;
  const { section } = panel.fence;
  const shapes: Shape[] = [line(PENS.thin, x0 - 6, 0, x1 + 6, 0)];
  for (const post of panel.posts.slice(stretch.from, stretch.to + 1)) {
    const x = panel.x(post.u);
    const half = post.along / 2;
    shapes.push(...box(PENS.outline, x - half, x + half, 0, post.top, [true, true], post.piece.key), ...capShapes(post, x));
    shapes.push(line(PENS.hidden, x - half, -STUB, x - half, 0, post.piece.key), line(PENS.hidden, x + half, -STUB, x + half, 0, post.piece.key));
    shapes.push(line(PENS.center, x, -STUB, x, 0));
  }
  for (const { piece, from, to, ends } of within(panel, panel.rails, x0, x1)) {
    if (piece.place.kind !== 'rail') continue;
    const half = section.railHeight / 2;
    shapes.push(...box(PENS.outline, from, to, piece.place.height - half, piece.place.height + half, ends, piece.key));
  }
  for (const { piece, from, to, ends } of within(panel, panel.skins, x0, x1)) {
    if (piece.place.kind !== 'skin') continue;
    shapes.push(...box(PENS.thin, from, to, piece.place.bottom, piece.place.top, ends, piece.key));
  }
  return shapes;
}

interface Seen {
  readonly piece: Piece;
  readonly from: number;
  readonly to: number;
  readonly ends: readonly [boolean, boolean];
}

/** Size along the fence of its thickest post: a gate may hang on one of its own. */
const thickest = ({ posts }: FenceParts): number => Math.max(...posts.map(({ along }) => along));

/** Pieces that stand in the stretch, cut at its ends (what runs past the last post to a corner or a jamb is kept). */
function within(panel: FenceParts, pieces: readonly Piece[], x0: number, x1: number): Seen[] {
  const first = panel.x(panel.posts[0]!.u);
  const last = panel.x(panel.posts[panel.posts.length - 1]!.u);
  const low = x0 <= first + SAME_LENGTH ? -Infinity : x0;
  const high = x1 >= last - SAME_LENGTH ? Infinity : x1;
  const reach = (thickest(panel) / 2) * ON_AXIS + SAME_LENGTH;
  const out: Seen[] = [];
  for (const piece of pieces) {
    if (piece.place.kind !== 'rail' && piece.place.kind !== 'skin') continue;
    const a = panel.x(piece.place.from);
    const b = panel.x(piece.place.to);
    // A piece that begins or ends at a jamb does so half a post past the post's center.
    const from = low - a > reach ? low : a;
    const to = b - high > reach ? high : b;
    if (Math.min(b, high) - Math.max(a, low) > Math.min(reach, (b - a) / 2)) out.push({ piece, from, to, ends: [from === a, to === b] });
  }
  return out;
}

/** Pieces of a stretch, for its table. */
export function piecesIn(stretch: Stretch): Piece[] {
  const { panel } = stretch;
  const x0 = panel.x(panel.posts[stretch.from]!.u);
  const x1 = panel.x(panel.posts[stretch.to]!.u);
  return [
    ...panel.posts.slice(stretch.from, stretch.to + 1).flatMap(({ piece, cap }) => (cap === null ? [piece] : [piece, cap])),
    ...within(panel, panel.rails, x0, x1).map((seen) => seen.piece),
    ...within(panel, panel.skins, x0, x1).map((seen) => seen.piece),
  ];
}

/** Marks of a stretch: every post, every piece where it begins (or where it comes in from the stretch before). */
export function bandOf(stretch: Stretch, x0: number, x1: number): Band {
  const { panel } = stretch;
  const { section } = panel.fence;
  const posts = panel.posts.slice(stretch.from, stretch.to + 1);
  const rows = section.rows;
  const between = (rows[rows.length - 1]! + rows[rows.length - 2]!) / 2;
  const labels: BandLabel[] = posts.map((post) => postLabel(post, panel.x(post.u), between));
  const places = posts.map((post) => panel.x(post.u));
  const reach = thickest(panel) / 2 + 1;
  const bayOf = (from: number): { readonly start: number; readonly size: number } => {
    let i = places.length - 2;
    while (i > 0 && places[i]! > from + reach) i -= 1;
    const start = Math.max(from, places[i]!);
    return { start, size: places[i + 1]! - start };
  };
  const rails = new Map<string, { readonly at: number; readonly mark: string; readonly targets: { y: typeof section.kr; piece: string }[] }>();
  for (const { piece, from } of within(panel, panel.rails, x0, x1)) {
    if (piece.place.kind !== 'rail') continue;
    const at = Math.round(from);
    const key = `${String(at)} ${piece.mark}`;
    const group = rails.get(key) ?? { at: from, mark: piece.mark, targets: [] };
    group.targets.push({ y: piece.place.height, piece: piece.key });
    rails.set(key, group);
  }
  const used = new Map<number, number>();
  for (const group of rails.values()) {
    const bay = bayOf(group.at);
    const key = Math.round(bay.start);
    const nth = used.get(key) ?? 0;
    used.set(key, nth + 1);
    labels.push({ text: group.mark, x: inches(bay.start + bay.size * (RAIL_AT[nth] ?? 0.7 + 0.02 * nth)), targets: group.targets });
  }
  const courses = new Map<string, number>();
  for (const { piece, from, to } of within(panel, panel.skins, x0, x1)) {
    if (piece.place.kind !== 'skin') continue;
    const bay = bayOf(from);
    const key = String(Math.round(bay.start));
    const nth = courses.get(key) ?? 0;
    courses.set(key, nth + 1);
    const y = clearHeight(rows, section.railHeight, piece.place.bottom, piece.place.top);
    const x = Math.min(bay.start + bay.size * (SKIN_AT + 0.05 * nth), to - 0.04 * (to - from) * (3 - Math.min(2, nth)));
    labels.push({ text: piece.mark, x: inches(x), targets: [{ y: inches(y), piece: piece.key }] });
  }
  return { top: inches(topOf(panel)), labels };
}

/** A height in the middle of the clear strip of skin nearest to its own middle. */
export function clearHeight(rows: readonly number[], rail: number, bottom: number, top: number): number {
  const edges = [bottom, ...rows.flatMap((row) => [row - rail / 2, row + rail / 2]), top];
  const middle = (bottom + top) / 2;
  let best = middle;
  let distance = Infinity;
  for (let i = 0; i + 1 < edges.length; i += 2) {
    const low = Math.max(bottom, edges[i]!);
    const high = Math.min(top, edges[i + 1]!);
    if (high - low < 1) continue;
    const at = (low + high) / 2;
    if (Math.abs(at - middle) < distance) {
      best = at;
      distance = Math.abs(at - middle);
    }
  }
  return best;
}

/** Paper inches that the marks of a whole fence need side by side. */
export function marksWidth(panel: FenceParts, width: (text: string) => number): number {
  const whole: Stretch = { panel, from: 0, to: panel.posts.length - 1 };
  return bandOf(whole, panel.x(panel.posts[0]!.u), panel.x(panel.posts[whole.to]!.u)).labels.reduce((sum, label) => sum + width(label.text), 0);
}
