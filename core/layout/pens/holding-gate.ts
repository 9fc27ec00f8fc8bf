import { holdingGate } from '../../brief/holding-gate.ts';
import { type PenGateBrief } from '../../brief/types.ts';
import { type HoldingPen } from '../types.ts';

/** The gate of a holding pen as an opening of its stretch of the drive alley. */
export const standHoldingGate = ({ brief, side, gateAt }: HoldingPen): PenGateBrief => ({ ...holdingGate(brief), side, at: gateAt });
