import { type PlanPoint } from '../base/points.ts';
import { say } from '../text/index.ts';
import { type Context } from './context.ts';

/** What one measure of a rule came to. `look` is neither met nor not: a person has to look. */
export interface Outcome {
  readonly verdict: 'met' | 'unmet' | 'look';
  /** In the rule's unit. */
  readonly measured: number | null;
  /** Where it differs from the table's: the limit that this project takes. */
  readonly limit?: string;
  readonly where: string;
  readonly at: PlanPoint | null;
}

/** One rule: what it finds in a project, one outcome for each measure. Never an empty list. */
export type Judge = (context: Context) => readonly Outcome[];

/** Met or not. */
export const judged = (met: boolean, measured: number | null, where: string, at: PlanPoint | null = null): Outcome =>
  ({ verdict: met ? 'met' : 'unmet', measured, where, at });

/** No subject in this project. */
export const none = (): readonly Outcome[] => [{ verdict: 'met', measured: null, where: say('where.none'), at: null }];

/** What the rule needs and the brief leaves open: the fields, as the project file names them. */
export const unset = (fields: readonly string[]): readonly Outcome[] =>
  [{ verdict: 'look', measured: null, where: say('where.unset', { fields: fields.join(', ') }), at: null }];
