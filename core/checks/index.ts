/** What a design is checked against, and how it came out. */
export { check } from './check.ts';
export { inOrder, type FindingGroup } from './in-order.ts';
export { type Danger, dangerOf, DANGERS } from './danger.ts';
export { fieldOfRule } from './rule-fields.ts';
export { namedRuns } from './words/named-runs.ts';
export { type Figures, printFigures } from './words/print-figures.ts';
export { ruleIds, rules, type RuleId } from './rules/table.ts';
export { originOf, type FieldOrigin, type FieldSource } from './rules/of-field.ts';
export { limitText, type Limit } from './rules/limit.ts';
export type { RuleRow, Trust } from './rules/row.ts';
export { seeAhead, type Sight } from './sight/see-ahead.ts';
export { stakePoints, type StakePoint } from './stakes/stake-points.ts';
export { controlPoints, type ControlPoint } from './stakes/control-points.ts';
export { bestTie, type BestTie } from './stakes/best-tie.ts';
export { lowSuns, sunSite, type LowSun, type SunSite } from './sun/low-suns.ts';
export { runGlare, trueBearing, type RunGlare } from './sun/run-glare.ts';
export { clockText, glareWords } from './words/glare.ts';
export type { Finding, Result } from './types.ts';
