import { type Vec } from '../../../../core/base/points.ts';
import { type Handle } from '../../../../core/board/types.ts';

/** Two handles nearer than this on the screen could not be told apart by a finger. */
const APART = 40;

/**
 * The handles that stand on the board: all of the chosen run, and of the others those that keep clear of them and of each other. A post
 * spacing, of which there is one a fence, waits until its run is chosen. `held`: those that may not go, whatever is near.
 */
export function shownHandles(handles: readonly Handle[], run: string | null, at: (handle: Handle) => Vec, held: ReadonlySet<string>): readonly Handle[] {
  const first = handles.filter((handle) => handle.run === run || held.has(handle.id));
  const rest = handles.filter((handle) => !first.includes(handle) && !handle.path.endsWith('postSpacing'));
  const taken = first.map(at);
  const clear = rest.filter((handle) => {
    const here = at(handle);
    if (taken.some((there) => Math.hypot(there.x - here.x, there.y - here.y) < APART)) return false;
    taken.push(here);
    return true;
  });
  return [...first, ...clear];
}
