import { type PlanPoint } from '../base/points.ts';
import { figureAt } from './figure-at.ts';
import { type Handle } from './types.ts';

/**
 * The figure that a drag of a handle to `point` asks for: on a whole step (inches or radians, as the handle's figure; null: none), within
 * what the field may be. `near` is the figure a moment before. A step that is not over 0 is a programmer's mistake and throws.
 */
export function draggedValue(handle: Handle, point: PlanPoint, near: number, step: number | null): number {
  if (step !== null && !(step > 0)) throw new Error(`a step must be over 0: ${String(step)}`);
  const free = figureAt(handle.drag, point, near);
  const stepped = step === null ? free : Math.round(free / step) * step;
  return Math.min(handle.greatest, Math.max(handle.least, stepped));
}
