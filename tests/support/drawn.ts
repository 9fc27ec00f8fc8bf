/** A project taken as far as its drafted drawings, and what must hold of any that is. */
import { readFileSync } from 'node:fs';
import { printFault, readBrief } from '../../core/brief/index.ts';
import { type Brief } from '../../core/brief/types.ts';
import { draft, type Drafted } from '../../core/drafting/draft.ts';
import { type Font, readFont } from '../../core/drafting/font.ts';
import { type Sheet } from '../../core/drafting/primitives.ts';
import { titleBlockOf } from '../../core/drawings/index.ts';
import { drawings } from '../../core/drawings/set.ts';
import { layOut, type Layout } from '../../core/layout/index.ts';
import { makeParts, type Parts } from '../../core/parts/index.ts';
import { type CutList, sectionJobs, tapeCutList } from '../../core/shop/cut-list/index.ts';
import { cutBreaches } from './cut-breaches.ts';
import { setBreaches } from './set-breaches.ts';
import { sheetBreaches } from './sheet-breaches.ts';

export const drawingFont: Font = readFont(new Uint8Array(readFileSync(new URL('../../shared/fonts/drawing.ttf', import.meta.url))));

export interface DrawnSet {
  readonly brief: Brief;
  readonly layout: Layout;
  readonly parts: Parts;
  /** As a tape would cut it: no solver is asked. */
  readonly cuts: CutList;
  readonly drafted: readonly Drafted[];
  readonly sheets: readonly Sheet[];
}

/** A set, or the faults in words for which there is none. */
export type Outcome = { readonly drawn: true; readonly set: DrawnSet } | { readonly drawn: false; readonly faults: readonly string[] };

/** Through the door, set-out, pieces, drawings and the drafting step. Throws only where one of them does. */
export function drawProject(text: string): Outcome {
  const read = readBrief(text);
  if (!read.ok) return { drawn: false, faults: read.faults.map(printFault) };
  const { brief } = read;
  const laid = layOut(brief);
  if (!laid.ok) return { drawn: false, faults: laid.faults.map(printFault) };
  const made = makeParts(brief, laid.layout);
  if (!made.ok) return { drawn: false, faults: made.faults.map(printFault) };
  const cuts = tapeCutList(sectionJobs(brief, made.parts));
  const input = { brief, layout: laid.layout, parts: made.parts, font: drawingFont, cuts };
  const block = titleBlockOf(brief);
  const drafted = drawings(input).map((drawing) => draft(drawingFont, block, drawing));
  return { drawn: true, set: { brief, layout: laid.layout, parts: made.parts, cuts, drafted, sheets: drafted.map((one) => one.sheet) } };
}

/** The set of a project that has no fault. Throws with the faults where it has. */
export function drawSound(text: string): DrawnSet {
  const outcome = drawProject(text);
  if (!outcome.drawn) throw new Error(outcome.faults.join('; '));
  return outcome.set;
}

export const EXAMPLES = ['juniper-flat', 'kalgara-yard', 'tight-curve'] as const;
export const exampleText = (name: (typeof EXAMPLES)[number]): string =>
  readFileSync(new URL(`../../shared/examples/${name}.penwright.json`, import.meta.url), 'utf8');

const LACKING = /the font has no (.*)$/;

/** A character that the font lacks is no breach where a person wrote it: nothing of theirs is dropped or changed. */
function isPersons(breach: string, brief: Brief): boolean {
  const lacking = LACKING.exec(breach)?.[1];
  const theirs = [brief.title, brief.client, brief.revision.letter, brief.revision.note, brief.control.note].join('');
  return lacking?.split(' ').every((char) => theirs.includes(char)) ?? false;
}

/** All that does not hold of a set, a sentence each: each drawing as the contract asks, every piece shown and marked, all of it placed. */
export function drawnBreaches(set: DrawnSet): string[] {
  return [
    ...set.drafted.flatMap(({ sheet, unplaced }) => unplaced.map((spec) => `${sheet.number}: no room for ${'text' in spec ? spec.text : 'measure' in spec ? spec.measure : 'a weld symbol'}`)),
    ...set.sheets.filter((sheet) => sheet.primitives.length === 0).map((sheet) => `${sheet.number}: nothing on it`),
    ...(set.sheets.length === 0 ? ['a set of no drawings'] : []),
    ...set.sheets.flatMap((sheet) => sheetBreaches(sheet, drawingFont)),
    ...cutBreaches(set.brief, set.parts, set.cuts),
    ...setBreaches(set.sheets, set.parts, drawingFont).filter((breach) => !isPersons(breach, set.brief)),
  ];
}
