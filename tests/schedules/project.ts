/** A brief worked through to its pieces, for the tests of the schedules. */
import { type Brief } from '../../core/brief/types.ts';
import { layOut, type Layout } from '../../core/layout/index.ts';
import { makeParts, type Parts } from '../../core/parts/index.ts';
import { randomBriefObject } from '../support/random-brief-object.ts';

export interface Worked {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
}

/** null where the brief has a fault. */
export function tryWork(brief: Brief): Worked | null {
  const laid = layOut(brief);
  if (!laid.ok) return null;
  const made = makeParts(brief, laid.layout);
  return made.ok ? { brief, layout: laid.layout, parts: made.parts } : null;
}

/** Throws where the brief has a fault. */
export function work(brief: Brief): Worked {
  const worked = tryWork(brief);
  if (worked === null) throw new Error('the brief of a test has a fault');
  return worked;
}

/** Those of the first random briefs that can be built. */
export const randomWorked = (count: number): readonly Worked[] =>
  Array.from({ length: count }, (_, seed) => tryWork(randomBriefObject(seed + 1))).filter((worked) => worked !== null);
