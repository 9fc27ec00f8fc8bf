import { type Brief } from '../../brief/types.ts';
import { type Pose } from '../pose.ts';
import { type Run } from '../types.ts';
import { walkedRun } from '../walked-run.ts';
import { PAD_SHOULDER, shoulderRun } from './shoulder-run.ts';

/** What follows the chute, in walking order: the squeeze pad on its centerline, a square shoulder before it. `end` is the chute's. */
export function yardRuns(brief: Brief, end: Pose): readonly Run[] {
  const { squeezePad: pad, chute } = brief;
  if (pad === null) return [];
  return [
    shoulderRun(PAD_SHOULDER, end, chute.width, pad.width),
    walkedRun('squeeze-pad', { kind: 'straight', length: pad.length }, pad.width, 'start', end, null),
  ];
}
