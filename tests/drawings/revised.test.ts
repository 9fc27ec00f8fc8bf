/** What changed since an earlier issue: clouds stand where something differs, nowhere else; the cover tells each drawing; nothing touches a text. */
import { describe, expect, it } from 'vitest';
import { readFileSync } from 'node:fs';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { draft } from '../../core/drafting/draft.ts';
import { readFont } from '../../core/drafting/font.ts';
import { type BarChart, type Drawing } from '../../core/drafting/model.ts';
import { type Sheet } from '../../core/drafting/primitives.ts';
import { compareDrawings } from '../../core/drawings/changes/compare.ts';
import { titleBlockOf } from '../../core/drawings/input.ts';
import { drawings } from '../../core/drawings/set.ts';
import { sectionJobs, tapeCutList } from '../../core/shop/cut-list/index.ts';
import { arc, makeBrief, straight } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';
import { sheetBreaches } from '../support/sheet-breaches.ts';

const font = readFont(new Uint8Array(readFileSync(new URL('../../shared/fonts/drawing.ttf', import.meta.url))));
/** With its cut list as a tape would cut it. */
const designOf = (brief: Brief) => {
  const parts = partsOf(brief);
  return { brief, layout: laidOut(brief), parts, cuts: tapeCutList(sectionJobs(brief, parts)) };
};
const first = makeBrief();
const revision = { letter: 'B', date: '2026-04-01', note: 'longer chute' };
const then = designOf(first);

/** The last run of the chute longer: nothing upstream of it moves. */
const longer = designOf(makeBrief({ revision, revisions: [first.revision], chute: { ...first.chute, runs: [straight(120), arc(192, 90, 'right'), straight(96)] } }));
const revised = drawings({ ...longer, font, since: then });
const sheets = revised.map((drawing) => draft(font, titleBlockOf(longer.brief), drawing).sheet);
const clouded = (drawing: Drawing): boolean => drawing.views.some(({ clouds }) => (clouds ?? []).length > 0) || [drawing.cloudedTables, drawing.cloudedNotes, drawing.cloudedBars].some((list) => (list ?? []).length > 0);
const textsOf = (sheet: Sheet): string[] => sheet.primitives.flatMap((item) => (item.kind === 'text' ? [item.text] : []));

describe('a revised set', () => {
  it('clouds the run that changed, and the panels upstream of it not', () => {
    const titled = (part: string): Drawing[] => revised.filter(({ number, title }) => number.startsWith('3') && title.includes(part));
    expect(titled('chute-3').some(clouded)).toBe(true);
    expect(titled('junction').some(clouded)).toBe(false);
    expect(titled('alley-1').some(clouded)).toBe(false);
    const plan = revised.find(({ number }) => number === '101')!;
    expect(clouded(plan)).toBe(true);
  });

  it('draws each cloud as scallops with the revision\'s letter, clear of every text', () => {
    revised.forEach((drawing, i) => {
      const sheet = sheets[i]!;
      expect(sheetBreaches(sheet, font), drawing.number).toEqual([]);
      const scallops = sheet.primitives.filter((item) => item.kind === 'arc' && item.pen.layer === 'NOTES').length;
      if (clouded(drawing)) {
        expect(scallops, drawing.number).toBeGreaterThan(8);
        expect(textsOf(sheet), drawing.number).toContain('B');
      } else expect(scallops, drawing.number).toBe(0);
    });
  });

  it('clouds the bars that are cut otherwise, whatever their numbers, and no cut list without the earlier one', () => {
    const cut = revised.filter(({ number }) => number.startsWith('14'));
    const bars = cut.flatMap(({ cloudedBars }) => cloudedBars ?? []);
    expect(bars.length).toBeGreaterThan(0);
    const contents = (charts: readonly BarChart[]): string[] => charts.flatMap(({ entries }) => entries.flatMap((entry) => (entry.kind === 'row' ? [JSON.stringify([entry.count, entry.parts])] : [])));
    const before = contents(drawings({ ...then, font }).flatMap((drawing) => drawing.bars ?? []));
    const whole = contents(cut.flatMap((drawing) => drawing.bars ?? []));
    const inClouds = contents(bars.map(({ chart, from, to }) => ({ ...chart, entries: chart.entries.slice(from, to) })));
    // Each bar is either in a cloud or among those before; bars of the upstream fences are as they were.
    for (const bar of whole) expect(inClouds.includes(bar) || before.includes(bar), bar).toBe(true);
    expect(whole.some((bar) => before.includes(bar) && !inClouds.includes(bar))).toBe(true);
    expect(drawings({ ...longer, font, since: { ...then, cuts: null } }).filter((drawing) => drawing.number.startsWith('14') && clouded(drawing))).toEqual([]);
  });

  it('clouds the nests that hold other plates, and the notes that say something else', () => {
    expect(revised.filter(({ number }) => number.startsWith('15')).some(clouded)).toBe(true);
    const longGrip = makeBrief({ revision, revisions: [first.revision], shop: { ...first.shop, grip: inches(first.shop.grip + 4) } });
    const noted = drawings({ ...designOf(longGrip), font, since: then }).filter(({ cloudedNotes }) => (cloudedNotes ?? []).length > 0);
    // The straight that the rolls grip stands in the notes for the rolls.
    expect(noted.some(({ number }) => number.startsWith('6'))).toBe(true);
  });

  it('tells each drawing that changed on the cover, under the revisions in their order', () => {
    const covers = revised.filter(({ number }) => number.startsWith('0'));
    const rows = (title: string): readonly (readonly string[])[] => covers.flatMap(({ tables }) => tables.filter((table) => table.title.startsWith(title)).flatMap((table) => table.rows));
    expect(rows('Revisions').map(([letter]) => letter)).toEqual(['A', 'B']);
    const told = rows('Changed since revision A').map(([number]) => number);
    expect(told).toEqual(revised.filter(clouded).map(({ number }) => number));
  });

  it('has no cloud where nothing changed but the letter and the date', () => {
    const same = drawings({ ...designOf(makeBrief({ revision })), font, since: then });
    expect(same.filter(clouded).map(({ number }) => number)).toEqual([]);
    const told = same.flatMap(({ tables }) => tables.filter(({ title }) => title.startsWith('Changed since'))).flatMap(({ rows }) => rows);
    expect(told).toEqual([['', 'nothing', '']]);
  });

  it('tells a drawing that is new or gone', () => {
    const set = drawings({ ...then, font });
    const without = set.filter(({ number }) => !number.startsWith('4'));
    const gone = compareDrawings(without, set).changes;
    expect(gone.map(({ kind, number }) => `${kind} ${number}`)).toEqual(set.filter(({ number }) => number.startsWith('4')).map(({ number }) => `gone ${number}`));
    expect(compareDrawings(set, without).changes.map(({ kind }) => kind)).toEqual(gone.map(() => 'new'));
  });

  it('takes no figure for changed that prints the same', () => {
    const hair = designOf(makeBrief({ crowdPen: { ...first.crowdPen, gateClearance: inches(first.crowdPen.gateClearance + 1e-6) } }));
    expect(drawings({ ...hair, font, since: then }).filter(clouded).map(({ number }) => number)).toEqual([]);
  });
});
