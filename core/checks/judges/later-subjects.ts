/** Rules whose subject a brief may have and this version does not build. */
import { type LaterSubjects } from '../../brief/types.ts';
import { later, none, type Judge } from '../outcome.ts';

/** Look where the brief has any of these subjects, else none in this project. */
export const subjectOf = (...subjects: readonly (keyof LaterSubjects)[]): Judge => ({ brief }) =>
  (subjects.some((subject) => brief.later[subject] > 0) ? later() : none());
