/** What a person must be told wherever this work is planned, drawn or checked: the cover bears it, and so does the screen. */
import { type StringKey } from '../text/index.ts';

/** The first is the one that stands over all the others. */
export const CAUTIONS: readonly StringKey[] = [
  'drawings.caution.codes', 'drawings.caution.pinch', 'drawings.caution.animal', 'drawings.caution.falls', 'drawings.caution.lines',
  'drawings.caution.welding', 'drawings.caution.lifting',
];
