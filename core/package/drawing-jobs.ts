import { type Brief } from '../brief/index.ts';
import { type Sheet } from '../drafting/primitives.ts';
import { say } from '../text/index.ts';
import { writeDxf, writeSvg } from '../writers/index.ts';
import { type Job } from './job.ts';
import { type PackageTools, writeSheets } from './tools.ts';
import { utf8 } from './utf8.ts';

/** Each drawing in its three forms, and the whole set in one file. */
export function drawingJobs(sheets: readonly Sheet[], brief: Brief, tools: PackageTools): readonly Job[] {
  const forms = sheets.flatMap((sheet): Job[] => {
    const base = { kind: 'drawings' as const, title: sheet.title };
    return [
      { ...base, path: `drawings/${sheet.file}.dxf`, make: () => utf8(writeDxf(sheet, tools.font)) },
      { ...base, path: `drawings/${sheet.file}.svg`, make: () => utf8(writeSvg(sheet, tools.font)) },
      { ...base, path: `drawings/${sheet.file}.pdf`, make: () => writeSheets([sheet], brief, sheet.title, tools) },
    ];
  });
  const title = say('package.all-drawings');
  return [...forms, { path: 'drawings/all.pdf', kind: 'drawings', title, make: () => writeSheets(sheets, brief, title, tools) }];
}
