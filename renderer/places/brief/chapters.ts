/** The brief in the order in which it is thought through. */
import { FORMAT_ROOT } from '../../../core/brief/format/index.ts';
import { type StringKey } from '../../../core/text/index.ts';

export interface Chapter {
  readonly id: string;
  readonly title: StringKey;
  /** Places of the project file that it asks about, in order. */
  readonly paths: readonly string[];
}

const NAMED: readonly Chapter[] = [
  { id: 'who', title: 'place-brief.chapter.who', paths: ['title', 'client', 'units', 'paper', 'site'] },
  { id: 'cattle', title: 'place-brief.chapter.cattle', paths: ['cattle'] },
  { id: 'alley', title: 'place-brief.chapter.alley', paths: ['alley'] },
  { id: 'crowdPen', title: 'place-brief.chapter.crowdPen', paths: ['crowdPen'] },
  { id: 'chute', title: 'place-brief.chapter.chute', paths: ['chute'] },
  { id: 'fences', title: 'place-brief.chapter.fences', paths: ['fences'] },
  { id: 'openings', title: 'place-brief.chapter.openings', paths: ['openings'] },
  { id: 'catwalks', title: 'place-brief.chapter.catwalks', paths: ['catwalks'] },
  { id: 'ramps', title: 'place-brief.chapter.ramps', paths: ['ramps'] },
  { id: 'yard', title: 'place-brief.chapter.yard', paths: ['squeezePad', 'sortPens', 'holdingPens', 'returnAlley', 'floors'] },
  { id: 'footings', title: 'place-brief.chapter.footings', paths: ['footings'] },
  { id: 'shop', title: 'place-brief.chapter.shop', paths: ['shop'] },
  { id: 'control', title: 'place-brief.chapter.control', paths: ['control'] },
  { id: 'revision', title: 'place-brief.chapter.revision', paths: ['revision', 'revisions', 'marks'] },
];

/** What says which format a file is in: nothing to ask a person. */
const FIXED: readonly string[] = ['format', 'version'];

export const topNames: readonly string[] = FORMAT_ROOT.what.kind === 'group' ? Object.keys(FORMAT_ROOT.what.fields) : [];

const further: Chapter = {
  id: 'further',
  title: 'place-brief.chapter.further',
  paths: topNames.filter((name) => !FIXED.includes(name) && !NAMED.some(({ paths }) => paths.includes(name))),
};

/** Every chapter; what the format has and no chapter names stands in a last one. */
export const CHAPTERS: readonly Chapter[] = further.paths.length === 0 ? NAMED : [...NAMED, further];

/** The chapter that asks about a place of the project file; null for one that no chapter asks about. */
export function chapterOf(path: string): Chapter | null {
  const [top] = path.split(/[.[]/);
  return CHAPTERS.find(({ paths }) => top !== undefined && paths.includes(top)) ?? null;
}
