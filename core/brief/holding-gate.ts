import { inches } from '../base/quantity.ts';
import { type HoldingPenBrief, type ReturnAlleyBrief } from './holding-brief.ts';
import { type PenGateBrief } from './opening-brief.ts';

/** The gate of a holding pen, in the side of the drive alley that the pen is on. Where it stands the layout says. */
export const holdingGate = ({ name, gate, swings, hangs, hingePost, path }: HoldingPenBrief): Omit<PenGateBrief, 'side'> =>
  ({ kind: 'pen-gate', run: name, at: inches(0), width: gate, swings, hangs, hingePost, path });

/** The gate by which a missed animal leaves for the return alley: it opens into it. */
export const returnGate = ({ from, width }: ReturnAlleyBrief): PenGateBrief =>
  ({ kind: 'pen-gate', ...from, width, swings: 'out', hangs: 'first', hingePost: null, path: RETURN_GATE });

/** Where the file says the return alley's gate. */
export const RETURN_GATE = 'returnAlley.from';
