/** The two corners that are not runs in line, seen from above at a large scale: at the pivot post, and at the mouth. */
import { curvePoint } from '../base/curve.ts';
import { inches, radians } from '../base/quantity.ts';
import { distance, scale as times, sub, type Vec, viewPoint } from '../base/points.ts';
import { PENS } from '../drafting/kit.ts';
import { type CalloutSpec, type DimensionSpec, type Shape, type WeldSpec } from '../drafting/model.ts';
import { faceCurve, facePoint, type Fence, type Post } from '../layout/index.ts';
import { type Piece } from '../parts/index.ts';
import { buttWeld, plateWeld } from '../schedules/index.ts';
import { say } from '../text/index.ts';
import { betweenJambs } from './between-jambs.ts';
import { boundsOf, turnPlan } from './bounds.ts';
import { type Detail } from './detail.ts';
import { rectangle } from './gate-outline.ts';
import { type DrawInput } from './input.ts';
import { postPieces } from './site-view.ts';

const PLAN = turnPlan({ x: 0, y: 0 }, 0);
const at = (p: Vec): ReturnType<typeof viewPoint> => viewPoint(p.x, p.y);
/** How much fence is drawn past a detail's last post, inches. */
const STUB = 14;

/** Rails of the top row and the skin, as two pairs of lines, between two places on a fence. */
function fenceStub(input: DrawInput, fence: Fence, from: number, to: number): Shape[] {
  const { kr, d, t } = fence.section;
  const sheet = t > 0 && fence.brief.solidTo > 0 ? [0, t] : [0];
  const shapes = betweenJambs(fence, from, to).flatMap(([a, b]) =>
    sheet.map((offset): Shape => ({ kind: 'curve', curve: PLAN.curve(faceCurve(fence, a, b, offset)), pen: PENS.thin })));
  for (const piece of topRails(input, fence)) {
    if (piece.place.kind !== 'rail') continue;
    const a = Math.max(from, piece.place.from);
    const b = Math.min(to, piece.place.to);
    if (b - a < 1e-6) continue;
    for (const side of [-1, 1]) {
      shapes.push({ kind: 'curve', curve: PLAN.curve(faceCurve(fence, a, b, kr + (side * d) / 2)), pen: PENS.outline, piece: piece.key });
    }
    shapes.push({ kind: 'curve', curve: PLAN.curve(faceCurve(fence, a, b, kr)), pen: PENS.center });
  }
  return shapes;
}

const topRails = (input: DrawInput, fence: Fence): Piece[] =>
  input.parts.pieces.filter(
    (piece) =>
      piece.run === fence.run && piece.side === fence.side && piece.place.kind === 'rail' && piece.place.row === fence.section.rows.length - 1,
  );

function postOf(input: DrawInput, post: Post): Shape {
  const piece = postPieces(input.parts)(post);
  const shape = { kind: 'circle', center: at(post.at), radius: inches(post.section.across / 2), pen: PENS.outline } as const;
  return piece === undefined ? shape : { ...shape, piece: piece.key };
}

function markOf(input: DrawInput, post: Post, toward: Vec): CalloutSpec[] {
  const piece = postPieces(input.parts)(post);
  return piece === undefined ? [] : [{ text: piece.mark, target: at(post.at), piece: piece.key, toward, layer: 'MARKS' }];
}

/** The pivot post's cap: its post stands in no fence, so that it is shown and marked here. */
function pivotCap(input: DrawInput): Piece | undefined {
  const pivot = input.layout.posts.find(({ kind }) => kind === 'pivot-post');
  const key = pivot === undefined ? undefined : postPieces(input.parts)(pivot)?.key;
  return input.parts.pieces.find(({ place }) => place.kind === 'cap' && place.on === key);
}

const fenceAt = (input: DrawInput, run: string, side: string): Fence | undefined =>
  input.layout.fences.find((fence) => fence.run === run && fence.side === side);

/** The corner at the pivot post: both fences' first posts, u0 along each face, the closing plates. */
export function pivotDetail(input: DrawInput): Detail {
  const { layout, brief } = input;
  const side = brief.crowdPen.hand;
  const alleys = layout.runs.filter((run) => run.name.startsWith('alley-'));
  const alley = fenceAt(input, alleys[alleys.length - 1]!.name, side)!;
  const funnel = fenceAt(input, 'junction', side)!;
  const alleySpan = alley.spans[alley.spans.length - 1]!;
  const alleyEnd = alleySpan.posts[alleySpan.posts.length - 1]!;
  const funnelStart = funnel.spans[0]!.posts[0]!;
  const stubs = [
    { fence: alley, from: Math.max(0, alleyEnd - STUB), to: alleyEnd, post: alleyEnd },
    { fence: funnel, from: funnelStart, to: funnelStart + STUB, post: funnelStart },
  ];
  const posts = layout.posts.filter((post) => post.kind === 'pivot-post' || isAt(post, alley, alleyEnd) || isAt(post, funnel, funnelStart));
  const plates = input.parts.pieces.filter((piece) => piece.kind === 'plate');
  const cap = pivotCap(input);
  const shapes: Shape[] = [
    ...stubs.flatMap(({ fence, from, to }) => fenceStub(input, fence, from, to)),
    ...stubs.map(({ fence, post }): Shape => ({ kind: 'curve', pen: PENS.center, curve: { kind: 'line', a: at(layout.pivot), b: at(facePoint(fence, post, 0)) } })),
    ...posts.map((post) => postOf(input, post)),
    ...(cap === undefined ? [] : capOf(cap, layout.pivot)),
    ...plates.flatMap((plate) => plateShapes(plate, plate.run === 'junction' ? funnel : alley)),
  ];
  const feet = stubs.map(({ fence, post }) => facePoint(fence, post, 0));
  const bounds = boundsOf([
    ...posts.map((post) => post.at),
    ...feet,
    ...stubs.flatMap(({ fence, from, to }) => [from, to].map((u) => facePoint(fence, u, fence.section.k))),
    { x: -3, y: -3 },
    { x: 3, y: 3 },
  ]);
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.low + bounds.high) / 2 };
  const angles = stubs.map(({ fence, post }) => Math.atan2(facePoint(fence, post, 0).y, facePoint(fence, post, 0).x));
  return {
    id: 'pivot corner',
    title: say('drawings.corner.pivot'),
    bounds,
    shapes,
    dimensions: (h) => [
      ...stubs.map(({ fence, post }, i): DimensionSpec => {
        // The dimension's line lies on the cattle's side of the face, where nothing else is.
        const foot = feet[i]!;
        const inward = sub(facePoint(fence, post, -1), foot);
        const along = sub(foot, layout.pivot);
        const left = along.x * inward.y - along.y * inward.x > 0 ? 1 : -1;
        return {
          measure: 'aligned', required: true, prefix: say('drawings.corner.start'), decimal: true, from: at(layout.pivot), to: at(foot),
          offsets: [4, 6.5, 9, 12].map((reach) => left * reach * h),
        };
      }),
      ...stubs.map(({ fence, post }, i): DimensionSpec => ({
        measure: 'aligned', required: true, prefix: say('drawings.corner.post'), decimal: true, from: at(feet[i]!), to: at(facePoint(fence, post, fence.section.k)),
        offsets: [3, -3, 5, -5, 8, -8].map((reach) => reach * h),
      })),
      ...wedge(angles, layout.pivotWedge, h),
    ],
    callouts: [
      ...posts.flatMap((post) => markOf(input, post, sub(post.at, post.kind === 'pivot-post' ? middle : layout.pivot))),
      ...(cap === undefined ? [] : [capMark(cap, layout.pivot, sub(layout.pivot, middle))]),
      ...plates.flatMap((plate): CalloutSpec[] => {
        if (plate.place.kind !== 'plate') return [];
        const { a, b } = plate.place;
        const center = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
        return [{ text: plate.mark, target: at(center), piece: plate.key, toward: sub(center, middle), layer: 'MARKS' }];
      }),
    ],
    welds: plates.flatMap(({ place, run }): WeldSpec[] => {
      if (place.kind !== 'plate') return [];
      const ends = [place.a, place.b].sort((p, q) => distance(p, layout.pivot) - distance(q, layout.pivot));
      const rail = (run === 'junction' ? funnel : alley).brief.rail.wall;
      const thickness = inches(0.25);
      return [
        { ...plateWeld(brief, 'plate-post', thickness, brief.crowdPen.pivotPost.wall).symbol, target: at(ends[0]!), toward: sub(ends[0]!, middle), optional: true },
        { ...plateWeld(brief, 'plate-rail', thickness, rail).symbol, target: at(ends[1]!), toward: sub(ends[1]!, middle), optional: true },
      ];
    }),
  };
}

const isAt = (post: Post, fence: Fence, u: number): boolean =>
  post.run === fence.run && post.side === fence.side && Math.abs(post.u - u) < 1e-6 && post.kind !== 'pivot-post';

function wedge(angles: readonly number[], size: number, h: number): DimensionSpec[] {
  const [a, b] = [angles[0]!, angles[1]!];
  const turn = ((b - a) % (2 * Math.PI) + 2 * Math.PI) % (2 * Math.PI);
  const from = Math.abs(turn - size) < 1e-6 ? a : b;
  return [
    {
      measure: 'angle', required: true, center: viewPoint(0, 0), from: radians(from), to: radians(from + size),
      offsets: [16, 20, 12, 26, 8, 32, 6, 40, 50, 62, 4.5].map((value) => value * h),
    },
  ];
}

/** A cap from above, on its post. */
const capOf = (cap: Piece, center: Vec): readonly Shape[] => (cap.flat?.outer.kind === 'path'
  ? rectangle(PENS.thin, center.x - cap.length / 2, center.x + cap.length / 2, center.y - cap.flatHeight! / 2, center.y + cap.flatHeight! / 2, cap.key)
  : [{ kind: 'circle', center: at(center), radius: inches(cap.length / 2), pen: PENS.thin, piece: cap.key }]);

/** On the cap's edge, a quarter turn from where the post's own mark stands. */
function capMark(cap: Piece, center: Vec, away: Vec): CalloutSpec {
  const toward = times({ x: -away.y, y: away.x }, 1 / Math.max(1e-9, Math.hypot(away.x, away.y)));
  const reach = Math.min(cap.length, cap.flatHeight ?? cap.length) / 2;
  return { text: cap.mark, target: viewPoint(center.x + toward.x * reach, center.y + toward.y * reach), piece: cap.key, toward, layer: 'MARKS' };
}

/** A closing plate in plan: its length along the face by its thickness outward. */
function plateShapes(plate: Piece, fence: Fence): Shape[] {
  if (plate.place.kind !== 'plate') return [];
  const { a, b } = plate.place;
  const along = times(sub(b, a), 1 / distance(a, b));
  const walking = sub(curvePoint(fence.face, 1), curvePoint(fence.face, 0));
  const same = along.x * walking.x + along.y * walking.y > 0 ? 1 : -1;
  const out = times({ x: -along.y, y: along.x }, fence.outward * same * 0.25);
  const corners = [a, b, { x: b.x + out.x, y: b.y + out.y }, { x: a.x + out.x, y: a.y + out.y }];
  return corners.map((corner, i): Shape => ({
    kind: 'curve', pen: PENS.outline, piece: plate.key, curve: { kind: 'line', a: at(corner), b: at(corners[(i + 1) % 4]!) },
  }));
}

/** The corner at the mouth, funnel side: the corner post, where the rails meet, how far past station 0 it stands. */
export function mouthDetail(input: DrawInput): Detail | null {
  const { layout, brief } = input;
  const side = brief.crowdPen.hand;
  const funnel = fenceAt(input, 'junction', side);
  const chute = fenceAt(input, 'chute-1', side);
  const corner = layout.posts.find((post) => post.kind === 'corner-post');
  if (funnel === undefined || chute === undefined || corner === undefined) return null;
  const span = funnel.spans[funnel.spans.length - 1]!;
  const last = span.posts[span.posts.length - 1]!;
  const first = chute.spans[0]!.posts[0]!;
  const face = curvePoint(chute.face, 0);
  const foot = facePoint(chute, first, 0);
  const funnelFoot = facePoint(funnel, last, 0);
  const shapes: Shape[] = [
    ...fenceStub(input, funnel, last - STUB, Math.max(last, span.railStops[span.railStops.length - 1]!, span.skinTo)),
    ...fenceStub(input, chute, Math.min(first, chute.spans[0]!.railStops[0]!, chute.spans[0]!.skinFrom), first + STUB),
    postOf(input, corner),
  ];
  const bounds = boundsOf([
    corner.at, face, foot,
    ...[last - STUB, last].map((u) => facePoint(funnel, u, funnel.section.k)),
    ...[first, first + STUB].map((u) => facePoint(chute, u, chute.section.k)),
    facePoint(funnel, last - STUB, 0), facePoint(chute, first + STUB, 0),
  ]);
  const middle = { x: (bounds.left + bounds.right) / 2, y: (bounds.low + bounds.high) / 2 };
  // The rail of which most is seen, in the middle of what is seen of it.
  const railIn = (fence: Fence, from: number, to: number, toward: Vec): CalloutSpec[] => {
    const seen = topRails(input, fence).flatMap((piece) => {
      if (piece.place.kind !== 'rail') return [];
      const [a, b] = [Math.max(from, piece.place.from), Math.min(to, piece.place.to)];
      return b > a ? [{ piece, u: (a + b) / 2, length: b - a }] : [];
    });
    const most = seen.toSorted((a, b) => b.length - a.length)[0];
    return most === undefined ? [] : [{ text: most.piece.mark, target: at(facePoint(fence, most.u, fence.section.kr)), piece: most.piece.key, toward, layer: 'MARKS' }];
  };
  const end = span.end;
  return {
    id: 'mouth corner',
    title: end.kind === 'mitre' ? say('drawings.corner.mouthMitre') : say('drawings.corner.mouthSquare'),
    bounds,
    shapes,
    dimensions: (h) => {
      const inward = sub(facePoint(chute, first, -1), foot);
      const along = sub(foot, face);
      const left = along.x * inward.y - along.y * inward.x > 0 ? 1 : -1;
      const specs: DimensionSpec[] = [];
      if (distance(face, foot) > 1e-6) {
        specs.push({ measure: 'aligned', required: true, decimal: true, from: at(face), to: at(foot), offsets: [4, 6, 9, 12].map((reach) => left * reach * h) });
      }
      specs.push(
        { measure: 'aligned', required: true, prefix: say('drawings.corner.post'), decimal: true, from: at(foot), to: at(corner.at), offsets: [-4, 4, -7, 7, 10, -10].map((reach) => reach * h) },
        { measure: 'aligned', required: false, prefix: say('drawings.corner.post'), decimal: true, from: at(funnelFoot), to: at(corner.at), offsets: [4, -4, 7, -7].map((reach) => reach * h) },
      );
      return specs;
    },
    callouts: [
      ...markOf(input, corner, sub(corner.at, face)),
      ...railIn(funnel, last - STUB, last, sub(corner.at, face)),
      ...railIn(chute, first, first + STUB, sub(corner.at, face)),
      ...(end.kind === 'mitre'
        ? [{
            text: say('drawings.corner.mitre', { angle: String(Math.round((end.mitre * 180 * 100) / Math.PI) / 100) }),
            target: at(facePoint(chute, chute.spans[0]!.railStops[0]!, chute.section.kr)), piece: null, toward: sub(middle, corner.at), layer: 'NOTES' as const,
          }]
        : []),
    ],
    welds: end.kind === 'mitre'
      ? [{
          ...buttWeld(brief, 'rail-mitre', chute.brief.rail.wall, brief.shop.weldGap, true).symbol,
          target: at(facePoint(chute, chute.spans[0]!.railStops[0]!, chute.section.kr + chute.section.d / 2)), toward: sub(corner.at, middle), optional: true,
        }]
      : [],
  };
}
