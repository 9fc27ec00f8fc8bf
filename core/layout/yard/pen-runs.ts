import { curveHeading, curvePoint } from '../../base/curve.ts';
import { planPoint, unitAt, type PlanPoint } from '../../base/points.ts';
import { penFrom } from '../../brief/sort-openings.ts';
import { SORT_PRACTICE } from '../../brief/sort-practice.ts';
import { type Brief, type SortPenBrief } from '../../brief/types.ts';
import { turnSign } from '../pose.ts';
import { type Run } from '../types.ts';
import { besideFence } from './beside-fence.ts';
import { pointRun } from './point-run.ts';

/** The fences round a sort pen, each under a name of its own: at its start, along its back, at its end. */
export type PenPart = 'in' | 'back' | 'out';
export const penRunName = (pen: string, part: PenPart): string => `${pen}-${part}`;
/** `sort-2` and `back` of `sort-2-back`; null for a run of another kind. */
export function penPartOf(run: string): { readonly pen: string; readonly part: PenPart } | null {
  const found = /^(sort-\d+)-(in|back|out)$/.exec(run);
  return found === null ? null : { pen: found[1]!, part: found[2] as PenPart };
}

/** Whether a pen takes the fence at the end of the one before it for its own start: where both lie on one side. */
export const sharesStart = (pens: readonly SortPenBrief[], index: number): boolean => index > 0 && pens[index - 1]!.side === pens[index]!.side;

/**
 * The fences of a sort pen as runs of no length: its own three, or two where the pen before it on that side has built its start. Their
 * faces go round the pen from its start to its end, away from the sort alley and back to it. `walked`: the alley's run beside it.
 */
export function penRuns({ sortPens: pens, fences }: Brief, index: number, walked: Run): readonly Run[] {
  const pen = pens[index]!;
  const face = walked.faces[pen.side];
  if (face?.kind !== 'line') throw new Error(`a sort alley without a straight face: ${walked.name}`);
  const along = unitAt(curveHeading(face, 0));
  const out = unitAt(curveHeading(face, 0) + (turnSign(pen.side) * Math.PI) / 2);
  // Along the alley from its run's start, and out from its face.
  const at = (u: number, v: number): PlanPoint => planPoint(face.a.x + along.x * u + out.x * v, face.a.y + along.y * u + out.y * v);
  const beside = besideFence(fences.pens[pen.side]);
  const shared = sharesStart(pens, index);
  const [from, to, back] = [penFrom(index), walked.length, SORT_PRACTICE.depth];
  const parts: readonly (readonly [PenPart, PlanPoint, PlanPoint])[] = [
    ['in', at(from, beside), at(from, back)], ['back', at(from + (shared ? beside : 0), back), at(to, back)], ['out', at(to, back), at(to, beside)],
  ];
  return parts.slice(shared ? 1 : 0).map(([part, a, b]) => penRun(penRunName(pen.name, part), walked, pen, { kind: 'line', a, b }));
}

const penRun = (name: string, walked: Run, { side }: SortPenBrief, line: NonNullable<Run['faces']['left']>): Run =>
  pointRun(name, curvePoint(walked.path, 1), walked.headings[1], walked.width, { left: side === 'left' ? line : null, right: side === 'right' ? line : null });
