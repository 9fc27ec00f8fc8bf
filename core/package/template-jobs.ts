import { templateSheets } from '../drawings/templates/index.ts';
import { tableModel } from '../shop/plates/index.ts';
import { makeTemplates, templateFlat } from '../shop/templates/index.ts';
import { say } from '../text/index.ts';
import { writeTableFile } from '../writers/index.ts';
import { type Job } from './job.ts';
import { type Design } from './pipeline.ts';
import { type PackageTools, writeSheets } from './tools.ts';
import { utf8 } from './utf8.ts';

/** A wrap template for every distinct cope and mitre of a pipe, to print, and to be cut by a plotter or a table. */
export const templateJobs = ({ brief, parts }: Pick<Design, 'brief' | 'parts'>, tools: PackageTools): readonly Job[] =>
  makeTemplates(brief, parts).flatMap((template): Job[] => {
    const base = { kind: 'templates' as const, title: say('template.file-title', { name: template.name }) };
    return [
      { ...base, path: `templates/${template.name}.pdf`, make: () => writeSheets(templateSheets(tools.font, brief, template), brief, base.title, tools) },
      { ...base, path: `templates/${template.name}.dxf`, make: () => { const { shape, etch } = templateFlat(template); return utf8(writeTableFile(tableModel([shape], etch), brief.units)); } },
    ];
  });
