/** The project file described, from the schema itself: what stands where, and what holds where nothing does. */
export { FORMAT, FORMAT_ROOT, fieldAt } from './format.ts';
export { standingAt, unitsOf, type Standing } from './standing.ts';
export { printValue } from './print-value.ts';
export { type Asked, type Field, type Group, type What } from './types.ts';
export { topicOf } from './topic.ts';
export { choiceOf, helpOf, labelOf } from './words.ts';
export { allowedRange } from '../allowed.ts';
