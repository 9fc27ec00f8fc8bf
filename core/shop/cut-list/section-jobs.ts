import { inches, type Inches } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { isBar, isRolled, lengthToCut, type Parts, stockLengths } from '../../parts/index.ts';
import { type Need, toSteps } from '../cutting/index.ts';
import { priceOfBar } from '../prices.ts';
import { type SectionJob, type StockBar } from './types.ts';

/** Every bar of steel or timber by its section, in the order in which the walk first meets it; a mark's pieces together. */
export function sectionJobs(brief: Brief, parts: Parts): readonly SectionJob[] {
  const sections = new Map<string, Map<string, { mark: string; length: Inches; quantity: number }>>();
  for (const piece of parts.pieces) {
    if (!isBar(piece)) continue;
    const marks = sections.get(piece.section) ?? new Map<string, { mark: string; length: Inches; quantity: number }>();
    sections.set(piece.section, marks);
    const known = marks.get(piece.mark);
    if (known === undefined) marks.set(piece.mark, { mark: piece.mark, length: lengthToCut(brief, piece.length, isRolled(piece)), quantity: 1 });
    else known.quantity += 1;
  }
  const { trim, kerf, keepDrop } = brief.shop;
  return [...sections].map(([section, marks]) => {
    const bars = stockBars(brief, section);
    return {
      section,
      bars,
      trim,
      keepDrop,
      job: {
        needs: [...marks.values()].map(({ mark, length, quantity }): Need => ({ mark, length: toSteps(length), quantity })),
        stock: bars.map(({ length, price, count }) => ({ length: toSteps(inches(length - trim)), price, count })),
        kerf: toSteps(kerf),
      },
    };
  });
}

/**
 * What can be bought, longest first, then what stands on the rack. A bar on the rack without a price is paid for: it costs nothing beside
 * bars that have one.
 */
function stockBars(brief: Brief, section: string): readonly StockBar[] {
  const bought = [...stockLengths(brief, section)].sort((a, b) => b - a).map((length): StockBar => ({ length, price: priceOfBar(brief, section, length), count: null }));
  const priced = bought.every(({ price }) => price !== null);
  const rack = (brief.shop.rack[section] ?? []).filter(({ length }) => length > brief.shop.trim)
    .map(({ length, count, price }): StockBar => ({ length, count, price: priced ? price ?? 0 : null }));
  return [...bought, ...rack];
}
