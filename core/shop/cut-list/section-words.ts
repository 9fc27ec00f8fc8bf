import { inches } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { printLength } from '../../units/index.ts';
import { type SectionCuts } from './types.ts';

/** What is to be known of a section's plan, a sentence each: how many bars and how few any plan could use, which to take, their cost, their use. */
export function sectionWords(units: 'in' | 'mm', { section, bars, atLeast, cost, keepDrop }: SectionCuts): readonly string[] {
  const size = (value: number): string => printLength(inches(value), units, 'feet', false);
  const counts = new Map<string, number>();
  for (const { stock } of bars) {
    const key = `${stock.count === null ? 'stock' : 'rack'} ${size(stock.length)}`;
    counts.set(key, (counts.get(key) ?? 0) + 1);
  }
  const take = [...counts].map(([key, count]) => {
    const length = key.slice(key.indexOf(' ') + 1);
    return say(key.startsWith('rack') ? 'cut.rack-bars' : count === 1 ? 'cut.bar' : 'cut.bars', { count, length });
  });
  const all = bars.reduce((sum, { stock }) => sum + stock.length, 0);
  const pieces = bars.reduce((sum, { cuts }) => sum + cuts.reduce((length, cut) => length + cut.length, 0), 0);
  const kept = bars.reduce((sum, bar) => sum + (bar.kept ? bar.drop : 0), 0);
  return [
    bars.length === 1 ? say('cut.bound-one', { section }) : say('cut.bound', { section, bars: bars.length, least: atLeast }),
    take.join(', '),
    ...(cost === null ? [] : [say('cut.cost', { total: cost.total.toFixed(2), least: cost.atLeast.toFixed(2) })]),
    say('cut.use', { percent: ((100 * pieces) / Math.max(all, 1e-9)).toFixed(1), kept: size(kept), least: size(keepDrop) }),
  ];
}
