/** Pieces cut from stock lengths. */
export { planCuts, type CutFault, type CutProgress } from './plan-cuts.ts';
export { cutColumns, cutRows, type CutRow } from './cut-rows.ts';
export { longestFirst } from './longest-first.ts';
export { fromSteps, toSteps } from './steps.ts';
export type { Cut, CutBar, CutPlan, CuttingJob, Need, Pattern, Size, Steps, StockLength } from './types.ts';
