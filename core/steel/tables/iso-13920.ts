/** ISO 13920:1996, Table 1, limit deviations of linear dimensions of welded constructions, ± mm, by a secondary printing. */

export const CLASSES_13920 = ['A', 'B', 'C', 'D'] as const;
export type Class13920 = (typeof CLASSES_13920)[number];

/** Up to and with so many mm; the last row takes everything over. */
export const ISO_13920_LINEAR: readonly (readonly [number, Readonly<Record<Class13920, number>>])[] = [
  [30, { A: 1, B: 1, C: 1, D: 1 }],
  [120, { A: 1, B: 2, C: 3, D: 4 }],
  [400, { A: 1, B: 2, C: 4, D: 7 }],
  [1000, { A: 2, B: 3, C: 6, D: 9 }],
  [2000, { A: 3, B: 4, C: 8, D: 12 }],
  [4000, { A: 4, B: 6, C: 11, D: 16 }],
  [8000, { A: 5, B: 8, C: 14, D: 21 }],
  [12000, { A: 6, B: 10, C: 18, D: 27 }],
  [16000, { A: 7, B: 12, C: 21, D: 32 }],
  [20000, { A: 8, B: 14, C: 24, D: 36 }],
  [Infinity, { A: 9, B: 16, C: 27, D: 40 }],
];
