import { inches, type Inches } from '../../base/quantity.ts';
import { CUT_STEP } from '../../base/tolerance.ts';
import { type Steps } from './types.ts';

const PER_INCH = Math.round(1 / CUT_STEP);

/** A length in whole steps. */
export const toSteps = (length: Inches): Steps => Math.round(length * PER_INCH) as Steps;
/** Whole steps as a length. */
export const fromSteps = (steps: Steps): Inches => inches(steps / PER_INCH);
