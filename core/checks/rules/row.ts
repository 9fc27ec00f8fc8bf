import { type Limit } from './limit.ts';

/** How far a rule is to be trusted: see the words under `trust.` in the strings table. */
export type Trust = 'read' | 'second' | 'practice' | 'practice (angles memory)' | 'geometry' | 'shop input' | 'memory';

/** One row of the rules. What it asks, in words, is the string `rule.` and its id. */
export interface RuleRow {
  readonly limit: Limit;
  /** Of the measured figure; empty where the rule has none. */
  readonly unit: string;
  /** The result where the limit is not met. */
  readonly failsAs: 'look' | 'fix';
  readonly trust: Trust;
  readonly source: string;
}
