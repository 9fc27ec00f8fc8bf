/** What the crew needs to set the steel up: order, lifts, match marks, vent holes. */
export { erectionSteps, type ErectionStep, type StepWork } from './erection.ts';
export { lifts, type Lift } from './lifts.ts';
export { matchMark, spliceRows, type SpliceRow } from './match-marks.ts';
export { SET_UP_PRACTICE } from './practice.ts';
export { ventRows } from './vent-holes.ts';
