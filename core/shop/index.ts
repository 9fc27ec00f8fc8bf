/** What the shop does with the pieces: checking what it has rolled. */
export { arcCheck, type ArcCheck, type ArcCheckFault, type ArcDrawn, type ArcMeasure } from './arc-check.ts';
export { arcCheckPoints, arcThrough, type ArcPoints, type Three } from './arc-through.ts';
export { linearTolerance } from './linear-tolerance.ts';
export { parsePoint } from './parse-point.ts';
