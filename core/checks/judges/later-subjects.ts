/** Rules whose subject a brief may have and this version does not build. */
import { type LaterSubjects } from '../../brief/types.ts';
import { say } from '../../text/index.ts';
import { judged, later, none, type Judge } from '../outcome.ts';

/** Look where the brief has any of these subjects, else none in this project. */
export const subjectOf = (...subjects: readonly (keyof LaterSubjects)[]): Judge => ({ brief }) =>
  (subjects.some((subject) => brief.later[subject] > 0) ? later() : none());

/** The crowd pen belongs to every project: with no catwalk in the brief none goes round it. */
export const crowdCatwalk: Judge = ({ brief, layout }) =>
  (brief.later.catwalks > 0 ? later() : [judged(false, null, say('where.noCatwalk'), layout.pivot)]);
