/** The set of drawings, from the design to drafted sheets. */
export { drawSet } from './set.ts';
export { type DrawInput, titleBlockOf } from './input.ts';
