import { type Finding } from '../../checks/index.ts';
import { say } from '../../text/index.ts';
import { writeJson } from '../../writers/index.ts';
import { type Job } from '../job.ts';
import { type PackageTools, writeSheets } from '../tools.ts';
import { utf8 } from '../utf8.ts';
import { type Report, reportSheets } from './report-sheets.ts';

/** The findings as data and as pages to read, with every default that the project left to the program. */
export function reportJobs(report: Report, tools: PackageTools): readonly Job[] {
  const title = say('report.title');
  return [
    { path: 'report/findings.json', kind: 'report', title, make: () => utf8(writeJson(report.findings.map(plainFinding))) },
    { path: 'report/findings.pdf', kind: 'report', title, make: () => writeSheets(reportSheets(report, tools.font), report.brief, title, tools) },
  ];
}

/** A finding as the package's contract has it: its place in the plan is for the drawings alone. */
const plainFinding = ({ id, result, measured, limit, unit, trust, source, where }: Finding): Omit<Finding, 'at'> => ({ id, result, measured, limit, unit, trust, source, where });
