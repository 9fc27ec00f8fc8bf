import { type Brief } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { type Parts } from '../parts/index.ts';
import { clearFigure } from './clear-figure.ts';
import { contextOf } from './context.ts';
import { type Outcome } from './outcome.ts';
import { judges } from './registry.ts';
import { limitText } from './rules/limit.ts';
import { ruleIds, rules, type RuleId } from './rules/table.ts';
import { type Finding, type Result } from './types.ts';

/** Every rule of the table against a project, in the table's order; a rule with several measures gives a finding for each. Pure. */
export function check(brief: Brief, layout: Layout, parts: Parts): readonly Finding[] {
  const context = contextOf(brief, layout, parts);
  return ruleIds.flatMap((id) => judges[id](context).map((outcome) => findingOf(id, outcome)));
}

function findingOf(id: RuleId, outcome: Outcome): Finding {
  const rule = rules[id];
  return {
    id,
    result: resultOf(outcome.verdict, rule.failsAs),
    measured: outcome.measured === null ? null : clearFigure(outcome.measured),
    limit: outcome.limit ?? limitText(rule.limit),
    unit: rule.unit,
    trust: rule.trust,
    source: rule.source,
    where: outcome.where,
    at: outcome.at,
  };
}

function resultOf(verdict: Outcome['verdict'], failsAs: 'look' | 'fix'): Result {
  switch (verdict) {
    case 'met': return 'ok';
    case 'unmet': return failsAs;
    case 'look': return 'look';
  }
}
