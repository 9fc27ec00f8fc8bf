import { type Brief, type DefaultUsed } from '../../brief/index.ts';
import { type Finding } from '../../checks/index.ts';
import { titleBlockOf } from '../../drawings/index.ts';
import { say } from '../../text/index.ts';
import { writeJson } from '../../writers/index.ts';
import { type Job } from '../job.ts';
import { type PackageTools, writeSheets } from '../tools.ts';
import { utf8 } from '../utf8.ts';
import { defaultsTable, findingsTable } from './report-rows.ts';
import { reportPages } from './report-pages.ts';

export interface Report {
  readonly brief: Brief;
  readonly findings: readonly Finding[];
  readonly defaults: readonly DefaultUsed[];
}

/** The findings as data and as pages to read, with every default that the project left to the program. */
export function reportJobs(report: Report, tools: PackageTools): readonly Job[] {
  const title = say('report.title');
  return [
    { path: 'report/findings.json', kind: 'report', title, make: () => utf8(writeJson(report.findings.map(plainFinding))) },
    { path: 'report/findings.pdf', kind: 'report', title, make: () => writeSheets(pagesOf(report, tools), report.brief, title, tools) },
  ];
}

/** A finding as the package's contract has it: its place in the plan is for the drawings alone. */
const plainFinding = ({ id, result, measured, limit, unit, trust, source, where }: Finding): Omit<Finding, 'at'> => ({ id, result, measured, limit, unit, trust, source, where });

function pagesOf({ brief, findings, defaults }: Report, tools: PackageTools): ReturnType<typeof reportPages> {
  const count = (result: Finding['result']): number => findings.filter((finding) => finding.result === result).length;
  return reportPages(tools.font, brief, titleBlockOf(brief), {
    title: say('report.title'),
    notes: [
      say('report.counts', { fix: count('fix'), look: count('look'), ok: count('ok') }),
      say('report.caution'),
      say('report.trust'),
      say('report.later'),
    ],
    tables: defaults.length === 0 ? [findingsTable(findings)] : [findingsTable(findings), defaultsTable(defaults)],
  });
}
