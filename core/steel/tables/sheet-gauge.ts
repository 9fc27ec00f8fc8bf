/**
 * Manufacturers' Standard Gauge: thickness (inches) and printed weight (lb/ft²). 7, 10, 11, 12, 14 and 16 as read in the table;
 * the others by its rule: the weight that 15 U.S.C. 206 gives the gauge number (read), and that weight over 41.82 lb/ft² an inch.
 */
export const SHEET_GAUGE: readonly { readonly gauge: number; readonly thickness: number; readonly weight: number }[] = [
  { gauge: 3, thickness: 0.2391, weight: 10 },
  { gauge: 4, thickness: 0.2242, weight: 9.375 },
  { gauge: 5, thickness: 0.2092, weight: 8.75 },
  { gauge: 6, thickness: 0.1943, weight: 8.125 },
  { gauge: 7, thickness: 0.1793, weight: 7.5 },
  { gauge: 8, thickness: 0.1644, weight: 6.875 },
  { gauge: 9, thickness: 0.1495, weight: 6.25 },
  { gauge: 10, thickness: 0.1345, weight: 5.625 },
  { gauge: 11, thickness: 0.1196, weight: 5 },
  { gauge: 12, thickness: 0.1046, weight: 4.375 },
  { gauge: 13, thickness: 0.0897, weight: 3.75 },
  { gauge: 14, thickness: 0.0747, weight: 3.125 },
  { gauge: 15, thickness: 0.0673, weight: 2.8125 },
  { gauge: 16, thickness: 0.0598, weight: 2.5 },
  { gauge: 18, thickness: 0.0478, weight: 2 },
  { gauge: 20, thickness: 0.0359, weight: 1.5 },
];
