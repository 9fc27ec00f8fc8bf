import { inches, type Inches } from '../base/quantity.ts';
import { type PenGateBrief } from './opening-brief.ts';
import { SORT_PRACTICE } from './sort-practice.ts';
import { type SortPenBrief } from './yard-brief.ts';

/** Along the sort alley's run beside it, where a pen begins: the first stands clear of the shoulder before it. */
export const penFrom = (index: number): Inches => inches(index === 0 ? SORT_PRACTICE.lead : 0);

/** The length of the sort alley's run beside a pen: room for the gate between its jambs, and no pen shorter than a usual one. */
export const sortLength = ({ gate }: SortPenBrief, index: number): Inches =>
  inches(penFrom(index) + Math.max(SORT_PRACTICE.length, gate + 2 * SORT_PRACTICE.jambRoom));

/**
 * The gates of the sort pens: in the sort alley's fence, hung on the jamb that is passed last, opening to the cattle, so that the open leaf
 * stands across the alley and turns them into the pen.
 */
export const sortOpenings = (pens: readonly SortPenBrief[]): readonly PenGateBrief[] => pens.map(({ name, side, gate, path }, index) => ({
  kind: 'pen-gate', run: name, side, at: inches(penFrom(index) + SORT_PRACTICE.jambRoom + gate / 2), width: gate,
  swings: 'in', hangs: 'last', hingePost: null, sorts: true, path,
}));
