import { type Brief, type DefaultUsed } from '../../brief/index.ts';
import { capacityLines, capacityOf, type Finding } from '../../checks/index.ts';
import { type Font } from '../../drafting/font.ts';
import { type Sheet } from '../../drafting/primitives.ts';
import { CAUTIONS } from '../../drawings/cautions.ts';
import { titleBlockOf } from '../../drawings/index.ts';
import { faceSegments, placePicture } from '../../drawings/place-picture.ts';
import { type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type ReportPart, reportPages } from './report-pages.ts';
import { defaultsTable, findingCards, rightTable } from './report-rows.ts';

export interface Report {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly findings: readonly Finding[];
  readonly defaults: readonly DefaultUsed[];
}

/** The report as a person reads it: what to fix, what to look at with a picture of each place, the cautions, what the place takes, what is right. */
export function reportSheets({ brief, layout, findings, defaults }: Report, font: Font): readonly Sheet[] {
  const count = (result: Finding['result']): number => findings.filter((finding) => finding.result === result).length;
  const segments = faceSegments(layout);
  const cards = (title: string, result: Finding['result']): ReportPart[] =>
    (count(result) === 0 ? [] : [{ kind: 'cards', title, cards: findingCards(findings, result, brief.units) }]);
  const parts: readonly ReportPart[] = [
    ...cards(say('report.fix-first'), 'fix'),
    { kind: 'words', title: say('drawings.cover.cautions'), paragraphs: CAUTIONS.map((key) => `- ${say(key)}`) },
    { kind: 'words', title: say('capacity.title'), paragraphs: capacityLines(brief, capacityOf(brief, layout.runs)).map((line) => `- ${line}`) },
    ...cards(say('report.look'), 'look'),
    ...(count('ok') === 0 ? [] : [{ kind: 'table', table: rightTable(findings, brief.units) } as const]),
    ...(defaults.length === 0 ? [] : [{ kind: 'table', table: defaultsTable(defaults) } as const]),
  ];
  const notes = [say('report.counts', { fix: count('fix'), look: count('look'), ok: count('ok') }), say('report.caution'), say('report.trust'), say('report.picture')];
  return reportPages(font, brief, titleBlockOf(brief), { title: say('report.title'), notes, parts }, (at, frame) => placePicture(segments, at, frame));
}
