/** A ramp's fence as it stands: plumb posts, rails and skin on the slope, the level dock; marks over it, heights plumb from its line. */
import { inches } from '../../base/quantity.ts';
import { sheetPoint, viewPoint } from '../../base/points.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { bandHeight, bandWidth } from '../../drafting/band.ts';
import { PENS, measureText, printSize } from '../../drafting/kit.ts';
import { type Shape, type View } from '../../drafting/model.ts';
import { runningDepth } from '../../drafting/running.ts';
import { footHeight } from '../../drafting/view.ts';
import { fromLowEnd } from '../../layout/index.ts';
import { type Piece } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { type Block } from '../flow.ts';
import { type Page } from '../input.ts';
import { sayBays } from '../say-bays.ts';
import { type Scale, scalesOf } from '../scales.ts';
import { fenceLabels } from './fence-labels.ts';
import { railCorners, type SlopedFence } from './fence-frame.ts';
import { capShapes } from '../post-cap.ts';
import { line, outline, rectangle } from './shapes.ts';

/** How much of a post is drawn below the ground, inches: the rest is in the tables. */
const STUB = 8;
/** Share of a page's height that the steel may take. */
const TALL = 0.36;

/** Posts `from` to `to`, counted from the low end. */
export interface SlopedStretch {
  readonly fence: SlopedFence;
  readonly from: number;
  readonly to: number;
}

const ends = ({ fence, from, to }: SlopedStretch): readonly [number, number] => [fence.posts[from]!.s, fence.posts[to]!.s];
const topOf = (stretch: SlopedStretch): number => stretch.fence.line(ends(stretch)[1]) + stretch.fence.panel.fence.brief.height;

/** The fence cut at posts into stretches that fit the page at the largest scale at which it is not too tall. */
export function slopedStretches(page: Page, fence: SlopedFence): readonly { readonly stretch: SlopedStretch; readonly scale: Scale }[] {
  const whole: SlopedStretch = { fence, from: 0, to: fence.posts.length - 1 };
  const list = scalesOf(page.block.units).filter(({ scale }) => scale <= 1 / 12);
  const scale = list.find((one) => topOf(whole) * one.scale <= TALL * page.room.height) ?? list[list.length - 1]!;
  const room = page.room.width - 22 * page.kit.h;
  const [s0, s1] = ends(whole);
  const bays = whole.to;
  const marks = fenceLabels(fence, s0, s1).reduce((sum, { text }) => sum + bandWidth(page.kit, text), 0);
  const most = Math.max(1, Math.floor(Math.min(room / (((s1 - s0) / bays) * scale.scale), (0.8 * page.room.width) / (marks / bays))));
  const count = Math.ceil(bays / most);
  return Array.from({ length: count }, (_, i) => ({
    stretch: { fence, from: Math.round((i * bays) / count), to: Math.round(((i + 1) * bays) / count) }, scale,
  }));
}

/** Heights plumb from the line, ascending: rail centers, the skin's edges, the fence's height. */
function heightsOf({ panel }: SlopedFence): readonly number[] {
  const { section, brief } = panel.fence;
  const values: number[] = [...section.rows, brief.height];
  if (panel.skins.length > 0) values.push(brief.solidFrom, brief.solidTo);
  return [...new Set(values.map((value) => Math.round(value * 1e6) / 1e6))].filter((value) => value > SAME_LENGTH).sort((a, b) => a - b);
}

function titleOf(stretch: SlopedStretch): string {
  const { ramp, panel } = stretch.fence;
  const { side, run } = panel.fence;
  // The low end lies to the left: who looks so stands on the right of cattle that walk up, on the left of those that walk down.
  const outside = (side === 'right') === (ramp.brief.kind === 'load');
  // Bays count along the walk, which may come down.
  const [from = 1, to = 1] = [stretch.from, stretch.to].map((i) => stretch.fence.posts[i]!.piece.bay).sort((a, b) => a - b);
  const surface = say(ramp.brief.surface.kind === 'stepped' ? 'drawings.ramp.nosings' : 'drawings.ramp.surface');
  return say(outside ? 'drawings.ramp.outside' : 'drawings.ramp.inside', { ramp: run, side, bays: sayBays(from, to - 1), line: surface });
}

export function slopedElevation(page: Page, stretch: SlopedStretch, scale: Scale): Block {
  const { kit } = page;
  const { fence } = stretch;
  const [s0, s1] = ends(stretch);
  const heights = heightsOf(fence);
  const labels = fenceLabels(fence, s0, s1);
  const low = fence.line(s0);
  const side = runningDepth(kit, 4 * kit.h, Math.max(...heights.map((value) => measureText(kit, printSize(kit, value))))) + 0.05;
  const posts = fence.posts.slice(stretch.from + 1, stretch.to + 1);
  const longest = Math.max(...posts.map(({ s }) => measureText(kit, printSize(kit, s - s0))));
  const title = titleOf(stretch);
  const marks = labels.reduce((sum, label) => sum + bandWidth(kit, label.text), 0);
  const row = kit.up + kit.down + 2 * kit.clear + 0.006;
  const width = Math.min(page.room.width, Math.max(side + (s1 - s0) * scale.scale + 6 * kit.h, 30 * kit.h, marks, (posts.length + 2) * row));
  const foot = footHeight(kit, { title, scaleText: scale.text }, page.block, width);
  const tall = topOf(stretch) * scale.scale;
  // Heights that have to spread stand a little under the line.
  const spreadOut = (heights.length + 1) * row - (fence.panel.fence.brief.height * scale.scale + kit.up) - low * scale.scale;
  const below = Math.max(STUB * scale.scale + runningDepth(kit, 2 * kit.h, longest), spreadOut);
  const height = foot + below + tall + bandHeight(kit);
  return {
    width,
    height,
    label: say('drawings.fence.name', { run: fence.panel.fence.run, side: fence.panel.fence.side }),
    place: (x, y) => {
      const view: View = {
        id: `slope ${fence.panel.fence.run} ${fence.panel.fence.side} ${String(stretch.from + 1)}`,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at: sheetPoint(x + side - s0 * scale.scale, y + foot + below),
        box: { x, y, width, height },
        shapes: shapesOf(stretch),
        dimensions: [],
        runnings: [
          { along: 'x', datum: viewPoint(s0, 0), at: posts.map(({ s }) => viewPoint(s, 0)), line: STUB * scale.scale + 2 * kit.h },
          {
            along: 'y', datum: viewPoint(s0, low), at: heights.map((value) => viewPoint(s0, low + value)), line: 4 * kit.h,
            limits: [below + low * scale.scale, fence.panel.fence.brief.height * scale.scale + kit.up],
          },
        ],
        bands: [{ top: inches(topOf(stretch)), labels }],
        callouts: gateCallouts(stretch),
      };
      return { views: [view] };
    },
  };
}

function shapesOf(stretch: SlopedStretch): Shape[] {
  const { fence } = stretch;
  const [s0, s1] = ends(stretch);
  const { section } = fence.panel.fence;
  const { run } = fence.ramp.figures;
  const level = (s: number): { x: number; y: number } => ({ x: s, y: fence.line(s) });
  const broken = run > s0 + SAME_LENGTH && run < s1 - SAME_LENGTH ? [run] : [];
  const stops = [s0, ...broken, s1];
  const shapes: Shape[] = [
    line(PENS.thin, { x: s0 - 6, y: 0 }, { x: s1 + 6, y: 0 }),
    ...stops.slice(1).map((stop, i) => line(PENS.center, level(stops[i]!), level(stop))),
  ];
  for (const post of fence.posts.slice(stretch.from, stretch.to + 1)) {
    const { s, piece, along } = post;
    const half = along / 2;
    shapes.push(...rectangle(PENS.outline, s - half, s + half, 0, post.top, piece.key), ...capShapes(post, s));
    shapes.push(line(PENS.hidden, { x: s - half, y: -STUB }, { x: s - half, y: 0 }, piece.key), line(PENS.hidden, { x: s + half, y: -STUB }, { x: s + half, y: 0 }, piece.key));
    shapes.push(line(PENS.center, { x: s, y: -STUB }, { x: s, y: 0 }));
  }
  for (const rail of fence.rails) {
    const [from, to] = [Math.max(rail.from, s0), Math.min(rail.to, s1)];
    if (to - from < SAME_LENGTH) continue;
    shapes.push(...outline(PENS.outline, railCorners(fence, rail, section.railHeight, from, to), rail.piece.key));
  }
  for (const skin of fence.skins) {
    const [from, to] = [Math.max(skin.from, s0), Math.min(skin.to, s1)];
    if (to - from < SAME_LENGTH) continue;
    const [a, b] = [fence.line(from), fence.line(to)];
    shapes.push(...outline(PENS.thin, [
      { x: from, y: a + skin.bottom }, { x: to, y: b + skin.bottom }, { x: to, y: b + skin.top }, { x: from, y: a + skin.top },
    ], skin.piece.key));
  }
  return shapes;
}

/** Pieces of a stretch, for its table. */
export function slopedPieces(stretch: SlopedStretch): readonly Piece[] {
  const [s0, s1] = ends(stretch);
  const within = ({ from, to }: { readonly from: number; readonly to: number }): boolean => Math.min(to, s1) - Math.max(from, s0) > SAME_LENGTH;
  return [
    ...stretch.fence.posts.slice(stretch.from, stretch.to + 1).flatMap(({ piece, cap }) => (cap === null ? [piece] : [piece, cap])),
    ...stretch.fence.rails.filter(within).map(({ piece }) => piece),
    ...stretch.fence.skins.filter(within).map(({ piece }) => piece),
  ];
}

/** The gates beside the dock, each in its opening. */
function gateCallouts({ fence, ...stretch }: SlopedStretch): View['callouts'] {
  const [s0, s1] = ends({ fence, ...stretch });
  return fence.panel.gates.flatMap(({ mark, u }) => {
    const s = fromLowEnd(fence.ramp, inches(u));
    if (s < s0 || s > s1) return [];
    return [{ text: mark, target: viewPoint(s, fence.line(s) + fence.panel.fence.brief.height / 2), piece: null, toward: { x: 1, y: 1 }, layer: 'NOTES' as const }];
  });
}
