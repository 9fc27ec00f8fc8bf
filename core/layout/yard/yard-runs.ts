import { sortLength } from '../../brief/sort-openings.ts';
import { type Brief } from '../../brief/types.ts';
import { type Pose } from '../pose.ts';
import { type Run } from '../types.ts';
import { otherPose, walkedRun } from '../walked-run.ts';
import { penRuns } from './pen-runs.ts';
import { PAD_SHOULDER, shoulderRun, SORT_SHOULDER } from './shoulder-run.ts';
import { sortWidth } from './sort-width.ts';

/**
 * What follows the chute, in walking order: the squeeze pad on its centerline, then the sort alley, one run a sort pen with that pen's
 * own fences behind it. A square shoulder stands where the width changes. `end` is the chute's.
 */
export function yardRuns(brief: Brief, end: Pose): readonly Run[] {
  const pad = padRuns(brief, end);
  const last = pad[pad.length - 1];
  return [...pad, ...sortRuns(brief, last === undefined ? end : otherPose(last, 'start'))];
}

function padRuns({ squeezePad: pad, chute }: Brief, end: Pose): readonly Run[] {
  if (pad === null) return [];
  return [
    shoulderRun(PAD_SHOULDER, end, chute.width, pad.width),
    walkedRun('squeeze-pad', { kind: 'straight', length: pad.length }, pad.width, 'start', end, null),
  ];
}

function sortRuns(brief: Brief, start: Pose): readonly Run[] {
  const { sortPens, squeezePad, chute } = brief;
  if (sortPens.length === 0) return [];
  const before = squeezePad?.width ?? chute.width;
  const width = sortWidth(brief);
  const runs: Run[] = width === before ? [] : [shoulderRun(SORT_SHOULDER, start, before, width)];
  let pose = start;
  sortPens.forEach((pen, index) => {
    const run = walkedRun(pen.name, { kind: 'straight', length: sortLength(pen, index) }, width, 'start', pose, null);
    pose = otherPose(run, 'start');
    runs.push(run, ...penRuns(brief, index, run));
  });
  return runs;
}
