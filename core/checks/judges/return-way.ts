/** The way back to the alley for an animal that was missed at the squeeze. */
import { curveLength, curvePoint } from '../../base/curve.ts';
import { distance, type Vec } from '../../base/points.ts';
import { positionFromStart } from '../../base/position.ts';
import { inches, type Inches } from '../../base/quantity.ts';
import { type Fence, type Run } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type Context } from '../context.ts';
import { judged, type Judge } from '../outcome.ts';
import { printed, printedPoint } from '../words/print.ts';

/** Between the end of the return alley and the posts of the alley that it meets, inches: no animal gets through (common practice, no source). */
const MOST_GAP = 6;

/** Met by a return alley that ends at a gate of the alley, or of the drive alley before it. Measured: how many do. */
export const returnWay: Judge = (context) => {
  const { brief, layout } = context;
  const last = layout.runs.findLast(({ name }) => name.startsWith('return-'));
  if (last === undefined) return [judged(false, 0, say('where.noReturn'))];
  const end = curvePoint(last.path, 1);
  const near = nearest(context, last);
  if (near === null) throw new Error('a layout without an alley');
  const { fence, gap, u } = near;
  const names = { run: fence.run, side: fence.side, gap: printed(brief, gap), ...printedPoint(brief, end) };
  if (gap > MOST_GAP) return [judged(false, 0, say('where.returnShort', names), end)];
  const gate = layout.openings.find((one) => one.kind === 'pen-gate' && one.run === fence.run && one.side === fence.side && Math.abs(one.u - u) <= last.width / 2);
  return gate === undefined ? [judged(false, 0, say('where.returnShut', names), end)] : [judged(true, 1, say('where.returnMeets', { ...names, gate: gate.path }), end)];
};

/** The alley's fence that the end of the return alley comes nearest to: from the farther of its two faces' ends to the posts' backs. */
function nearest({ layout }: Context, { faces, path }: Run): { readonly fence: Fence; readonly gap: Inches; readonly u: number } | null {
  const alley = layout.fences.filter(({ run }) => /^(alley|hold)-\d+$/.test(run));
  const ends = [faces.left, faces.right].flatMap((face) => (face === null ? [] : [curvePoint(face, 1)]));
  const found = alley.map((fence) => {
    const far = Math.max(...ends.map((end) => distanceTo(fence, end)));
    return { fence, gap: inches(Math.max(0, far - fence.section.k - fence.section.D / 2)), u: positionFromStart(fence.face, curvePoint(path, 1)) };
  });
  return found.reduce<(typeof found)[number] | null>((best, one) => (best === null || one.gap < best.gap ? one : best), null);
}

function distanceTo({ face }: Fence, point: Vec): number {
  const share = positionFromStart(face, point) / curveLength(face);
  return Math.min(...[0, Math.min(1, Math.max(0, share)), 1].map((at) => distance(curvePoint(face, at), point)));
}
