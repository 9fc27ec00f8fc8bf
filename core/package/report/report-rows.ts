import { type DefaultUsed } from '../../brief/index.ts';
import { type Finding, inOrder } from '../../checks/index.ts';
import { say, type StringKey } from '../../text/index.ts';

/** A table of the report: its columns with their shares of the paper's width, and the words of its rows. */
export interface ReportTable {
  readonly title: string;
  readonly columns: readonly { readonly title: string; readonly share: number }[];
  readonly rows: readonly (readonly string[])[];
}

const column = (key: StringKey, share: number): { readonly title: string; readonly share: number } => ({ title: say(key), share });

/** Every finding as a person reads it: what to fix first, then where to look, then what is right. */
export function findingsTable(findings: readonly Finding[]): ReportTable {
  return {
    title: say('report.findings'),
    columns: [
      column('report.result', 0.06), column('report.rule', 0.24), column('report.measured', 0.1), column('report.limit', 0.15),
      column('report.source', 0.2), column('report.where', 0.25),
    ],
    rows: inOrder(findings).flatMap((group) => group.findings.map(findingRow)),
  };
}

function findingRow(finding: Finding): readonly string[] {
  const unit = finding.unit === '' ? '' : ` ${finding.unit}`;
  return [
    say(`result.${finding.result}`),
    `${say(`rule.${finding.id}` as StringKey)} (${finding.id})`,
    finding.measured === null ? '-' : `${shortFigure(finding.measured)}${unit}`,
    // A limit that is a word alone, such as "report", has no unit.
    /[0-9]/.test(finding.limit) ? `${finding.limit}${unit}` : finding.limit,
    [say(`trust.${finding.trust}` as StringKey), finding.source].filter((part) => part !== '').join(': '),
    finding.where,
  ];
}

/** Three decimals at most: more than any of the limits has. The full figure stands in findings.json. */
const shortFigure = (value: number): string => String(Math.round(value * 1000) / 1000 + 0);

/** What the project left to the program, so that a person can agree to it or not. */
export const defaultsTable = (defaults: readonly DefaultUsed[]): ReportTable => ({
  title: say('report.defaults'),
  columns: [column('report.field', 0.4), column('report.value', 0.6)],
  rows: defaults.map((used) => [used.path, used.value]),
});
