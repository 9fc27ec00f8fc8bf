import { type FenceBrief, type FencesBrief, type Side } from '../types.ts';

/** The settings of the fence on one side of a run, by the run's name. */
export function fenceOfRun(fences: FencesBrief, run: string, side: Side): FenceBrief {
  const part = /^[a-z]+/.exec(run)?.[0];
  switch (part) {
    case 'alley':
    case 'junction':
    case 'chute':
      return fences[part][side];
    case 'crowd':
      return fences.crowdPen;
    case 'load':
    case 'unload':
      return fences.ramp[side];
    case 'squeeze':
    case 'pad':
      return fences.pad[side];
    default:
      return fences.pens[side];
  }
}
