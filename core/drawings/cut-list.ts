/** The cut list: every section's bars to scale along their length, those that are cut alike as one row, a box to tick for each bar. */
import { inches } from '../base/quantity.ts';
import { sheetPoint } from '../base/points.ts';
import { barHeadingHeight, barRowHeight, barsInHeight } from '../drafting/bars.ts';
import { measureText, printSize } from '../drafting/kit.ts';
import { type BarChart, type BarHeading, type BarPart, type BarRow, type Drawing } from '../drafting/model.ts';
import { alikeBars, type AlikeBars, type BarPlan, type CutList, cutWords, type SectionCuts, sectionWords } from '../shop/cut-list/index.ts';
import { say } from '../text/index.ts';
import { type DrawInput, type Page, pageOf } from './input.ts';
import { drawingOf } from './drawing-of.ts';

type Entry = BarHeading | BarRow;

export function cutListDrawings(input: DrawInput): Drawing[] {
  const cuts = input.cuts ?? null;
  if (cuts === null) return [];
  const page = pageOf(input);
  const title = say('cut.title');
  return chartsOf(page, input, cuts).map((chart, index) => ({
    ...drawingOf(page, { views: [], tables: [], notes: [] }, '14', index, title, say('cut.file')),
    bars: [chart],
  }));
}

/** One chart a page, all to one scale: a heading stays with the first row under it. */
function chartsOf(page: Page, input: DrawInput, cuts: CutList): BarChart[] {
  const { kit, room } = page;
  const alike = cuts.map((section) => ({ heading: headingOf(input, section), bars: alikeBars(section.bars) }));
  const longest = Math.max(1, ...cuts.flatMap(({ bars }) => bars.map(({ stock }) => stock.length)));
  const left = Math.max(12 * kit.h, ...alike.flatMap(({ bars }) => bars.flatMap((some) => rowOf(input, some).lines.map((line) => measureText(kit, line)))));
  const frame = { width: room.width, left, scale: (room.width - left - kit.h) / longest };
  // More bars alike than a page has boxes to tick stand in several rows.
  const most = barsInHeight(kit, frame, 1, room.height / 2);
  const sections = alike.map(({ heading, bars }) => ({ heading, rows: bars.flatMap((some) => inParts(some, most)).map((some) => rowOf(input, some)) }));
  const height = (entry: Entry): number => (entry.kind === 'heading' ? barHeadingHeight(kit, room.width, entry) : barRowHeight(kit, frame, entry));
  const pages: Entry[][] = [];
  let open: Entry[] = [];
  let free = room.height;
  const put = (...entries: Entry[]): boolean => {
    const needs = entries.reduce((sum, entry) => sum + height(entry), 0);
    const fits = needs <= free;
    if (!fits && open.length > 0) {
      pages.push(open);
      open = [];
      free = room.height;
    }
    open.push(...entries);
    free -= needs;
    return fits;
  };
  put({ kind: 'heading', title: say('cut.title'), words: legendOf(input) });
  for (const { heading, rows } of sections) {
    rows.forEach((row, index) => {
      if (index === 0) {
        put(heading, row);
        return;
      }
      const needs = height(row);
      // A page that a section goes on on begins with its name.
      if (needs > free) put({ ...heading, words: say('cut.goes-on') }, row);
      else put(row);
    });
  }
  if (sections.length === 0) put({ kind: 'heading', title: say('cut.none'), words: '' });
  pages.push(open);
  return pages.map((entries) => ({ ...frame, at: sheetPoint(room.x, room.y + room.height), entries }));
}

const inParts = ({ bar, first, count }: AlikeBars, most: number): AlikeBars[] =>
  Array.from({ length: Math.ceil(count / most) }, (_, part) => ({ bar, first: first + part * most, count: Math.min(most, count - part * most) }));

function legendOf({ brief: { shop, units } }: DrawInput): string {
  const size = (value: number): string => printSize({ units }, value);
  const kerf = say('cut.kerf', { kerf: size(shop.kerf) });
  return `${shop.trim > 0 ? `${kerf}, ${say('cut.trim', { trim: size(shop.trim) })}` : kerf}. ${say('cut.legend')}`;
}

const headingOf = ({ brief }: DrawInput, section: SectionCuts): BarHeading => {
  const [title = '', ...words] = sectionWords(brief.units, section);
  return { kind: 'heading', title, words: words.join('. ') };
};

function rowOf({ brief: { units } }: DrawInput, { bar, first, count }: AlikeBars): BarRow {
  const size = (value: number): string => printSize({ units }, value);
  const which = count === 1 ? say('cut.which', { first }) : say('cut.which-to', { first, last: first + count - 1 });
  return {
    kind: 'row',
    count,
    lines: [say(bar.stock.count === null ? 'cut.of' : 'cut.from-rack', { count, length: size(bar.stock.length) })],
    parts: partsOf(bar, size),
    words: `${which}: ${cutWords(bar, units)}`,
  };
}

const partsOf = ({ trim, cuts, drop, kept }: BarPlan, size: (value: number) => string): BarPart[] => [
  ...(trim > 0 ? [{ kind: 'trim', length: trim } as const] : []),
  ...cuts.flatMap(({ mark, length, kerf }): BarPart[] => [{ kind: 'piece', words: [say('cut.piece', { mark, length: size(length) }), mark], length }, ...(kerf > 0 ? [{ kind: 'kerf', length: kerf } as const] : [])]),
  ...(drop > 0 ? [{ kind: kept ? 'kept' : 'scrap', length: inches(drop) } as const] : []),
];
