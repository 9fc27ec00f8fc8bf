/** The arc under an elevation, seen from above: face, rail axis, rails, posts; radius, chord and rise of one rolled rail. */
import { curvePoint } from '../base/curve.ts';
import { inches, radians } from '../base/quantity.ts';
import { type Vec, sheetPoint, viewPoint } from '../base/points.ts';
import { NOISE } from '../base/tolerance.ts';
import { hasRoom } from '../drafting/draft.ts';
import { PENS } from '../drafting/kit.ts';
import { type DimensionSpec, type Shape, type View } from '../drafting/model.ts';
import { footHeight } from '../drafting/view.ts';
import { faceCurve, facePoint, headingAt } from '../layout/index.ts';
import { type Piece } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { betweenJambs } from './between-jambs.ts';
import { boundsOf, extremesOf, turnPlan } from './bounds.ts';
import { type Stretch, piecesIn } from './elevation.ts';
import { type Block } from './flow.ts';
import { type DrawInput, type Page } from './input.ts';
import { type Scale, scalesOf } from './scales.ts';

/** Paper kept round the steel for its dimensions, in letter heights. */
const SIDE = 12;
const OVER = 7.5;

/** Margins tried, as shares of the usual: a short arc needs more paper round it for its figures. */
const MARGINS = [0.8, 1, 1.5, 2.2, 3];

/** The arc's block with the smallest margins in which all its dimensions have room. */
export function arcBlock(input: DrawInput, page: Page, stretch: Stretch, elevation: Scale, most: { readonly width: number; readonly height: number }): Block {
  const blocks = [most, page.room].flatMap((room) => MARGINS.map((margin) => () => arcAt(page, stretch, elevation, room, margin)));
  let last = blocks[0]!();
  for (const make of blocks) {
    last = make();
    const views = last.place(page.room.x, page.room.y).views ?? [];
    const trial = { number: '', title: '', file: '', paper: page.paper, scale: 1, scaleText: '', views, tables: [], notes: [] };
    if (hasRoom(input.font, page.block, trial)) return last;
  }
  return last;
}

/** A block for the arc; `most`: the paper width and height that it may take. Scale at most that of its elevation. */
function arcAt(page: Page, stretch: Stretch, elevation: Scale, most: { readonly width: number; readonly height: number }, margin: number): Block {
  const { kit, block } = page;
  const side = SIDE * margin * kit.h;
  const over = OVER * margin * kit.h;
  const { fence, posts } = stretch.panel;
  const u0 = posts[stretch.from]!.u;
  const u1 = posts[stretch.to]!.u;
  const middle = (u0 + u1) / 2;
  const turn = turnPlan(facePoint(fence, middle, 0), headingAt(fence, middle));
  const { kr, k, d } = fence.section;
  const back = Math.max(k + fence.section.D / 2, ...posts.slice(stretch.from, stretch.to + 1).map((post) => post.offset + post.across / 2));
  const lines = [0, kr - d / 2, kr + d / 2, back].map((offset) => turn.curve(faceCurve(fence, u0, u1, offset)));
  const bounds = boundsOf(lines.flatMap(extremesOf));
  const title = say('drawings.arc.title', { run: fence.run, side: fence.side });
  const room = { width: most.width - 2 * side, height: most.height - 2 * over - 3 * kit.pitch };
  const span = { width: bounds.right - bounds.left, height: bounds.high - bounds.low };
  const list = scalesOf(page.block.units).filter((one) => one.scale <= elevation.scale + 1e-12);
  const scale = list.find((one) => span.width * one.scale <= room.width && span.height * one.scale <= room.height) ?? list[list.length - 1]!;
  const width = Math.min(most.width, Math.max(span.width * scale.scale + 2 * side, 34 * kit.h));
  const foot = footHeight(kit, { title, scaleText: scale.text }, block, width);
  const height = foot + span.height * scale.scale + 2 * over;
  const shapes: Shape[] = [
    ...betweenJambs(fence, u0, u1).flatMap(([a, b]) =>
      ([[0, PENS.thin], [kr - d / 2, PENS.outline], [kr + d / 2, PENS.outline]] as const).map(([offset, pen]): Shape =>
        ({ kind: 'curve', curve: turn.curve(faceCurve(fence, a, b, offset)), pen }))),
    { kind: 'curve', curve: turn.curve(faceCurve(fence, u0, u1, kr)), pen: PENS.center },
    ...posts.slice(stretch.from, stretch.to + 1).map((post): Shape => ({
      kind: 'circle',
      center: turn.point(facePoint(fence, post.u, post.offset)),
      radius: inches(post.across / 2),
      pen: PENS.outline,
      piece: post.piece.key,
    })),
  ];
  return {
    width,
    height,
    label: say('drawings.fence.name', { run: fence.run, side: fence.side }),
    follows: true,
    place: (x, y) => {
      const at = sheetPoint(
        x + width / 2 - ((bounds.left + bounds.right) / 2) * scale.scale,
        y + foot + over - bounds.low * scale.scale,
      );
      const view: View = {
        id: `arc ${fence.run} ${fence.side} ${String(stretch.from + 1)}`,
        title,
        scale: scale.scale,
        scaleText: scale.text,
        at,
        box: { x, y, width, height },
        shapes,
        dimensions: dimensionsOf(stretch, turn, kit.h),
        runnings: [],
        bands: [],
        callouts: [],
      };
      return { views: [view] };
    },
  };
}

function dimensionsOf(stretch: Stretch, turn: ReturnType<typeof turnPlan>, h: number): DimensionSpec[] {
  const { fence, posts } = stretch.panel;
  const u0 = posts[stretch.from]!.u;
  const u1 = posts[stretch.to]!.u;
  const axis = turn.curve(faceCurve(fence, u0, u1, fence.section.kr));
  const face = turn.curve(faceCurve(fence, u0, u1, 0));
  if (axis.kind !== 'arc' || face.kind !== 'arc') return [];
  const angles = (shares: readonly number[]): ReturnType<typeof radians>[] => shares.map((share) => radians(axis.start + axis.sweep * share));
  const radii: DimensionSpec[] = [
    {
      measure: 'radius', required: true, decimal: true, prefix: say('drawings.arc.axis'), center: axis.center, radius: axis.radius,
      angles: angles([0.5, 0.62, 0.38, 0.75, 0.25, 0.88, 0.12, 1, 0]),
    },
    {
      measure: 'radius', required: false, decimal: true, prefix: say('drawings.arc.face'), center: face.center, radius: face.radius,
      angles: angles([0.8, 0.2, 0.9, 0.1, 0.7, 0.3]),
    },
  ];
  const specs: DimensionSpec[] = [];
  const rolled = longestWhole(stretch, u0, u1);
  if (rolled?.place.kind === 'rail') {
    // The piece itself: its joints' stations less the weld gap, half at each end.
    const gap = (rolled.place.to - rolled.place.from - lengthOnFace(rolled.length, face.radius, axis.radius)) / 2;
    const part = turn.curve(faceCurve(fence, rolled.place.from + gap, rolled.place.to - gap, fence.section.kr));
    const ends: [Vec, Vec] = [curvePoint(part, 0), curvePoint(part, 1)];
    const top = curvePoint(part, 0.5);
    const foot = { x: (ends[0].x + ends[1].x) / 2, y: (ends[0].y + ends[1].y) / 2 };
    // The hollow of the arc, where the straightedge lies, is where the chord's dimension goes.
    const hollow = axis.sweep > 0 ? 1 : -1;
    const offsets = [3, 4.5, 6, 2, 7.5, 9, 11].map((reach) => hollow * reach * h);
    specs.push(
      {
        measure: 'aligned', required: true, decimal: true, prefix: say('drawings.arc.chord', { mark: rolled.mark }),
        from: viewPoint(ends[0].x, ends[0].y), to: viewPoint(ends[1].x, ends[1].y), offsets: [...offsets, ...offsets.map((value) => -value)],
      },
      {
        measure: 'aligned', required: true, decimal: true, prefix: say('drawings.arc.rise', { mark: rolled.mark }),
        from: viewPoint(foot.x, foot.y), to: top, offsets: [0, 2, -2, 4, -4, 7, -7, 10, -10, 14, -14, 18, -18, 24, -24].map((reach) => reach * h),
      },
    );
  }
  // The radii come last: they may stand anywhere on the arc, the rise at the rail's own middle alone.
  return [...specs, ...radii];
}

/** The longest rolled rail that stands whole in the stretch, out to where rails end past its posts, at a mitre or a jamb; null: none does. */
function longestWhole(stretch: Stretch, u0: number, u1: number): Piece | null {
  const rails = piecesIn(stretch).filter((piece) => piece.kind === 'rail' && piece.bend !== null);
  const stops = stretch.panel.fence.spans.flatMap(({ posts, railStops }) => posts.map((u, i) => ({ u, stop: railStops[i]! })));
  const stopAt = (post: number): number => stops.find(({ u }) => Math.abs(u - post) <= NOISE)?.stop ?? post;
  const [least, most] = [Math.min(u0, stopAt(u0)) - NOISE, Math.max(u1, stopAt(u1)) + NOISE];
  const whole = rails.filter((piece) => piece.place.kind === 'rail' && piece.place.from >= least && piece.place.to <= most);
  return whole.reduce<Piece | null>((best, piece) => (best === null || piece.length > best.length + 1e-6 ? piece : best), null);
}

/** A length on the rail axis as the same angle's length on the face. */
const lengthOnFace = (length: number, face: number, axis: number): number => (length * face) / axis;
