/** From a brief to the set-out: path, fences, posts, fouls. */
export { layOut, type LayoutResult } from './lay-out.ts';
export { faceCurve, facePoint, headingAt, lengthAtOffset, radiusAtOffset, type FaceLine } from './fence-points.ts';
export { pivotGap } from './pivot-gap.ts';
export { lineHeight, rampFigures, type CleatFigures, type RampFigures, type StepFigures } from './ramps/figures.ts';
export { fromLowEnd } from './ramps/along.ts';
export { rampParts, type RampPart } from './ramps/ramp-fences.ts';
export type * from './types.ts';
export { alleyPin, latchedHalf } from './openings/leaf-swings.ts';
export { distanceToFace } from './openings/distance-to-face.ts';
export { jambOffset } from './openings/cuts.ts';
export * from './openings/types.ts';
export { GATE_FROM_END, penArea } from './pens/holding-runs.ts';
export { penPartOf } from './yard/pen-runs.ts';
export { roofCorners } from './yard/roof-corners.ts';
export type * from './catwalks/types.ts';
export { backOffset, backRadius, chordAside, deckPoint, deckRise, MOST_RISE, reachAside, type DeckFence } from './catwalks/deck-shape.ts';
export { stepAngle, stepFigures } from './catwalks/flight.ts';
