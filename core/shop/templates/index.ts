/** Wrap templates for copes and mitres of pipe. */
export { copeOf, turnOf } from './cope-of.ts';
export { makeTemplates } from './make-templates.ts';
export { CURVE_TOLERANCE, sampleWrap } from './sample-wrap.ts';
export { templateFlat, type TemplateFlat } from './template-flat.ts';
export { PAPER_BELOW, wrapOf } from './wrap-of.ts';
export type { Cope, Template, TemplateUse, Wrap } from './types.ts';
