import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { type BarPlan } from './types.ts';

/** The cuts of a bar in their order, alike ones together, and what becomes of the rest. */
export function cutWords({ cuts, drop, kept }: BarPlan, units: 'in' | 'mm'): string {
  const size = (value: number): string => printLength(inches(value), units, 'feet', false);
  const runs: { mark: string; length: number; count: number }[] = [];
  for (const { mark, length } of cuts) {
    const last = runs.at(-1);
    if (last?.mark === mark && last.length === length) last.count += 1;
    else runs.push({ mark, length, count: 1 });
  }
  const words = runs.map(({ mark, length, count }) => say(count === 1 ? 'cut.piece' : 'cut.pieces', { count, mark, length: size(length) }));
  return [...words, drop > 0 ? say(kept ? 'cut.kept' : 'cut.scrap', { length: size(drop) }) : say('cut.full')].join(', ');
}
