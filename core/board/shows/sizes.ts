/** Sizes: of each field that a hand may move, and overall. */
import { curvePoint, type Arc, type Curve } from '../../base/curve.ts';
import { angleOf, sub, viewPoint, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, radians } from '../../base/quantity.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { overall } from '../../drawings/plan.ts';
import { facePoint, radiusAtOffset, type Fence, type Run } from '../../layout/index.ts';
import { catwalkSizes } from './catwalk-sizes.ts';
import { gateSizes } from './gate-sizes.ts';
import { holdingSizes } from './holding-sizes.ts';
import { openingSizes } from './opening-sizes.ts';
import { rampSizes } from './ramp-sizes.ts';
import { roofSizes } from './roof-sizes.ts';
import { yardSizes } from './yard-sizes.ts';
import { type Contributor, type Scene, type SizeShown } from './show.ts';

export const sizes: Contributor = (scene) => {
  const { options, extremes, h } = scene;
  if (options.dragged !== null) return { sizes: [...fieldSizes(scene), ...spacingSizes(scene), ...openingSizes(scene), ...catwalkSizes(scene), ...rampSizes(scene), ...yardSizes(scene), ...holdingSizes(scene), ...gateSizes(scene), ...roofSizes(scene)].filter(({ path }) => path === options.dragged) };
  if (!options.sizes) return {};
  return { sizes: [...overall(extremes, options.scale, h).map((spec) => ({ path: null, spec })), ...fieldSizes(scene), ...yardSizes(scene), ...holdingSizes(scene)] };
};

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

function fieldSizes(scene: Scene): readonly SizeShown[] {
  const { layout, brief } = scene.input;
  const counts = { alley: 0, chute: 0, returnAlley: 0 };
  return layout.runs.flatMap((run): readonly SizeShown[] => {
    if (run.name === 'crowd-pen') return penSizes(scene, run);
    if (run.name === 'junction') return [{ path: 'crowdPen.funnelAngle', spec: funnelSize(scene) }];
    const part = partOf(run);
    if (part === null) return [];
    const place = `${part}.runs[${String(counts[part])}]`;
    counts[part] += 1;
    return [...(run.from === 0 ? widthSize(scene, run, brief.crowdPen.hand) : []), ...runSizes(scene, run, place)];
  });
}

/** The list of the file that a run of the walk up to the squeeze stands in; null for one past it, or a ramp. */
function partOf({ name, from }: Run): 'alley' | 'chute' | 'returnAlley' | null {
  if (from !== null) return 'chute';
  if (name.startsWith('return-')) return 'returnAlley';
  return name.startsWith('alley-') ? 'alley' : null;
}

const SHARES = [0.5, 0.35, 0.65, 0.2, 0.8];

const radiusSize = (arc: Arc<PlanPoint>, required: boolean): DimensionSpec => ({
  measure: 'radius', required, center: seen(arc.center), radius: arc.radius, angles: SHARES.map((share) => radians(arc.start + arc.sweep * share)),
});

/** The angle of an arc, counter-clockwise whichever way it is walked. `offsets` in screen inches from its center. */
const angleSize = (center: Vec, start: number, sweep: number, offsets: readonly number[]): DimensionSpec => ({
  measure: 'angle', required: false, center: seen(center), from: radians(Math.min(start, start + sweep)), to: radians(Math.max(start, start + sweep)), offsets,
});

function penSizes({ h, options }: Scene, run: Run): readonly SizeShown[] {
  if (run.path.kind !== 'arc') return [];
  const { center, start, sweep, radius } = run.path;
  const reach = radius * options.scale;
  return [
    { path: 'crowdPen.radius', spec: radiusSize(run.path, true) },
    { path: 'crowdPen.sweep', spec: angleSize(center, start, sweep, [0.55 * reach, 0.4 * reach, 8 * h]) },
  ];
}

function funnelSize({ input: { brief, layout }, options, h }: Scene): DimensionSpec {
  const { hand, funnelAngle, radius } = brief.crowdPen;
  const reach = radius * options.scale;
  return angleSize(layout.pivot, Math.PI / 2, hand === 'left' ? -funnelAngle : funnelAngle, [0.6 * reach, 0.85 * reach, 10 * h]);
}

/** Across the chute, a little past the mouth. */
function widthSize({ h }: Scene, run: Run, hand: 'left' | 'right'): readonly SizeShown[] {
  const { left, right } = run.faces;
  if (left === null || right === null) return [];
  const [from, to] = [curvePoint(hand === 'left' ? left : right, 0.15), curvePoint(hand === 'left' ? right : left, 0.15)];
  return [{ path: 'chute.width', spec: { measure: 'aligned', required: true, from: seen(from), to: seen(to), offsets: [0, 3 * h, -3 * h] } }];
}

function runSizes({ h, options }: Scene, run: Run, place: string): readonly SizeShown[] {
  const { path, faces } = run;
  const outer: Curve<PlanPoint> | null = faces.right;
  if (path.kind === 'line') {
    if (outer?.kind !== 'line') return [];
    return [{ path: `${place}.length`, spec: { measure: 'aligned', required: false, from: seen(outer.a), to: seen(outer.b), offsets: [-4, -6, -9].map((reach) => reach * h) } }];
  }
  const inner = run.hand === null ? null : faces[run.hand];
  if (inner?.kind !== 'arc') return [];
  const reach = inner.radius * options.scale;
  return [
    { path: `${place}.insideRadius`, spec: radiusSize(inner, false) },
    { path: `${place}.angle`, spec: angleSize(inner.center, inner.start, inner.sweep, [0.6 * reach, 0.35 * reach, 8 * h]) },
  ];
}

/** The first bay of the first fence that takes its spacing from a field: the steel's own size, which may be less than the spacing. */
function spacingSizes({ input: { layout }, h, options }: Scene): readonly SizeShown[] {
  const fence = layout.fences.find((one) => one.brief.postSpacingPath === options.dragged);
  const [first, second] = fence?.spans[0]?.posts ?? [];
  if (fence === undefined || first === undefined || second === undefined) return [];
  return [{ path: fence.brief.postSpacingPath, spec: baySize(fence, first, second, h) }];
}

function baySize(fence: Fence, first: number, second: number, h: number): DimensionSpec {
  const { face, section: { k }, outward } = fence;
  const [from, to] = [facePoint(fence, first, k), facePoint(fence, second, k)];
  const radius = radiusAtOffset(fence, k);
  if (face.kind === 'line' || radius === null) {
    return { measure: 'aligned', required: true, from: seen(from), to: seen(to), offsets: [4, 6, 9].map((reach) => outward * reach * h) };
  }
  const start = angleOf(sub(from, face.center));
  const sweep = (Math.sign(face.sweep) * (second - first)) / face.radius;
  return {
    measure: 'arc', required: true, center: seen(face.center), radius: inches(radius), from: radians(Math.min(start, start + sweep)),
    to: radians(Math.max(start, start + sweep)), offsets: [4, 6, 9].map((reach) => fence.radiusSign * reach * h),
  };
}
