/** From the set-out to pieces of steel: rails, posts, skins, closing plates, their marks; bends and saddles. */
export { makeParts, type PartsResult } from './make-parts.ts';
export { bendAngle, chord, gaugeChord, gaugeRise, orderLength, radiusFromRise, rise, setRadius } from './bend.ts';
export { copeReach, cutBack, saddleReach, slopeCopeReach, type CopeReach } from './saddle.ts';
export { jointPatterns, type Fits, type JointPatterns, type Joints } from './joint-patterns.ts';
export { gateMarks } from './gates/gate-marks.ts';
export { beamHeight } from './gates/backstop.ts';
export { isBar, isRolled, lengthToCut, longestStock, stockLengths, stockSheets } from './stock.ts';
export { fitsSheet, skinCourses, type StockSheets } from './skin-courses.ts';
export { isRampFence } from './ramps/ramp-pieces.ts';
export { rampConcrete, type FormRow, type RampConcrete } from './ramps/concrete.ts';
export { bracketSize, deckBuild, type DeckBuild } from './catwalks/build.ts';
export { ventHole, type VentHole } from './vent-hole.ts';
export { CAP_PRACTICE } from './post-caps.ts';
export { floorSlabs, type FloorSlab } from './floors.ts';
export { RAMP_PRACTICE } from './ramps/practice.ts';
export type * from './types.ts';
export { boltHeight } from './gates/latch.ts';
export { hingeHeights, tabDepth, type HungKind } from './gates/hinge-tabs.ts';
