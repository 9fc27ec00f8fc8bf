/** What the shop does with the pieces: checking what it has rolled. */
export { arcCheck, arcThrough, type ArcCheck, type ArcCheckFault, type ArcMeasure } from './arc-check.ts';
export { linearTolerance } from './linear-tolerance.ts';
