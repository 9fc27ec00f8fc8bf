/** Wrap templates on paper, full size. */
export { templateSheets } from './template-sheets.ts';
