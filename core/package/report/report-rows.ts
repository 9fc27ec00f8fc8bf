import { type Brief, type DefaultUsed } from '../../brief/index.ts';
import { dangerOf, type Finding, inOrder, printFigures } from '../../checks/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { type ReportCard, type ReportTable } from './report-data.ts';

const column = (key: StringKey, share: number): { readonly title: string; readonly share: number } => ({ title: say(key), share });

const ruleWords = (finding: Finding): string => `${say(`rule.${finding.id}` as StringKey)} (${finding.id})`;
const trustWords = (finding: Finding): string => [say(`trust.${finding.trust}` as StringKey), finding.source].filter((part) => part !== '').join(': ');

/** What to act on, as cards: the findings of one result, what may hurt a person first. */
export const findingCards = (findings: readonly Finding[], result: Finding['result'], units: Brief['units']): readonly ReportCard[] =>
  inOrder(findings).filter((group) => group.result === result).flatMap((group) => group.findings.map((finding) => cardOf(finding, units)));

function cardOf(finding: Finding, units: Brief['units']): ReportCard {
  const { measured, limit } = printFigures(finding, units);
  return {
    lines: [
      say('report.card.head', { result: say(`result.${finding.result}`), rule: ruleWords(finding) }),
      finding.where,
      measured === null ? say('report.card.limit', { limit }) : say('report.card.figures', { measured, limit }),
      say('report.card.danger', { danger: say(`place-check.danger.${dangerOf(finding.id)}`), trust: trustWords(finding) }),
    ],
    at: finding.at,
  };
}

/** What is right, in a table. */
export function rightTable(findings: readonly Finding[], units: Brief['units']): ReportTable {
  return {
    title: say('report.right'),
    columns: [column('report.rule', 0.27), column('report.measured', 0.1), column('report.limit', 0.15), column('report.source', 0.2), column('report.where', 0.28)],
    rows: inOrder(findings).filter((group) => group.result === 'ok').flatMap((group) => group.findings.map((finding) => {
      const { measured, limit } = printFigures(finding, units);
      return [ruleWords(finding), measured ?? '-', limit, trustWords(finding), finding.where];
    })),
  };
}

/** What the project left to the program, so that a person can agree to it or not. */
export const defaultsTable = (defaults: readonly DefaultUsed[]): ReportTable => ({
  title: say('report.defaults'),
  columns: [column('report.field', 0.4), column('report.value', 0.6)],
  rows: defaults.map((used) => [used.path, used.value]),
});
