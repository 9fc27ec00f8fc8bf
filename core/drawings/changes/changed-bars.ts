/** Which bars of a cut list an earlier one had not: by what is cut from them, whatever their numbers. */
import { type BarChart, type BarRange } from '../../drafting/model.ts';

type Entry = BarChart['entries'][number];

/** A section's heading with its count and bound; a page that it goes on on begins with its name alone, which tells nothing. */
const contentOf = (entry: Entry): string => JSON.stringify(entry.kind === 'heading' ? [entry.title, entry.words] : [entry.count, entry.lines, entry.parts]);

/** Every entry of the earlier charts, and how often. */
export function barsBefore(charts: readonly BarChart[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const entry of charts.flatMap(({ entries }) => entries)) counts.set(contentOf(entry), (counts.get(contentOf(entry)) ?? 0) + 1);
  return counts;
}

/** The ranges of a chart that are new; takes from `left` what it finds there. `goesOn`: the words of a heading that is repeated. */
export function changedBars(chart: BarChart, left: Map<string, number>, goesOn: string): BarRange[] {
  const ranges: BarRange[] = [];
  chart.entries.forEach((entry, i) => {
    if (entry.kind === 'heading' && entry.words === goesOn) return;
    const content = contentOf(entry);
    const count = left.get(content) ?? 0;
    if (count > 0) {
      left.set(content, count - 1);
      return;
    }
    const last = ranges[ranges.length - 1];
    if (last !== undefined && last.to === i) ranges[ranges.length - 1] = { ...last, to: i + 1 };
    else ranges.push({ chart, from: i, to: i + 1 });
  });
  return ranges;
}
