import { type BarPlan } from './types.ts';

/** Bars that are cut alike, one after another on the list. */
export interface AlikeBars {
  readonly bar: BarPlan;
  /** Its first bar on the list, from 1. */
  readonly first: number;
  readonly count: number;
}

/** Bars in their order, those that are cut alike together. */
export function alikeBars(bars: readonly BarPlan[]): readonly AlikeBars[] {
  const out: AlikeBars[] = [];
  for (const [index, bar] of bars.entries()) {
    const last = out.at(-1);
    if (last !== undefined && keyOf(last.bar) === keyOf(bar)) out[out.length - 1] = { ...last, count: last.count + 1 };
    else out.push({ bar, first: index + 1, count: 1 });
  }
  return out;
}

const keyOf = ({ stock, cuts }: BarPlan): string =>
  `${String(stock.length)} ${stock.count === null ? 'stock' : 'rack'}: ${cuts.map(({ mark, length }) => `${mark} ${String(length)}`).join(', ')}`;
