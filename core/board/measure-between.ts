import { distance } from '../base/points.ts';
import { inches, type Inches } from '../base/quantity.ts';
import { type OnFace, type Snap } from './snap.ts';

/** What a tape reads between two things. */
export interface Measure {
  readonly straight: Inches;
  /** Along the plan's x and y, with their signs, from the first to the second. */
  readonly dx: Inches;
  readonly dy: Inches;
  /** Along the face that both lie on or beside; null where they share none. */
  readonly along: (Pick<OnFace, 'run' | 'side'> & { readonly length: Inches }) | null;
}

/** The measure from one thing to another. Of two faces that both share, the one on which they lie closer together. */
export function measureBetween(from: Snap, to: Snap): Measure {
  return {
    straight: inches(distance(from.at, to.at)),
    dx: inches(to.at.x - from.at.x),
    dy: inches(to.at.y - from.at.y),
    along: alongFace(from, to),
  };
}

function alongFace(from: Snap, to: Snap): Measure['along'] {
  let least: Measure['along'] = null;
  for (const a of from.on) {
    for (const b of to.on) {
      if (a.run !== b.run || a.side !== b.side) continue;
      const length = inches(Math.abs(b.along - a.along));
      if (least === null || length < least.length) least = { run: a.run, side: a.side, length };
    }
  }
  return least;
}
