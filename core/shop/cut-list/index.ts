/** The cut list of a whole project. */
export { sectionJobs } from './section-jobs.ts';
export { type CutListProgress, planCutList, tapeCutList } from './plan-cut-list.ts';
export { cutListColumns, cutListRows, type CutListRow } from './rows.ts';
export { alikeBars, type AlikeBars } from './alike-bars.ts';
export { cutWords } from './cut-words.ts';
export { sectionWords } from './section-words.ts';
export type { BarCut, BarPlan, CutList, SectionCuts, SectionJob, StockBar } from './types.ts';
