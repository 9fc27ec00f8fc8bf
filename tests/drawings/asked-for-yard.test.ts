/** Drawings of pad, pens, return alley and catwalks bear the sizes that their trades need. Values are worked from the brief and the set-out, not from the drawing. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBrief } from '../../core/brief/index.ts';
import { draft } from '../../core/drafting/draft.ts';
import { catwalkDrawings } from '../../core/drawings/catwalks/index.ts';
import { titleBlockOf } from '../../core/drawings/index.ts';
import { yardDrawings } from '../../core/drawings/yard/index.ts';
import { layOut } from '../../core/layout/index.ts';
import { makeParts } from '../../core/parts/index.ts';
import { drawingFont, type DrawnSet } from '../support/drawn.ts';
import { randomProjects } from '../support/random-brief.ts';
import { across, count, rowsWith, same, upright, viewsNamed, type Viewed } from './asked-for.ts';

type Some = Pick<DrawnSet, 'brief' | 'layout' | 'parts' | 'sheets'> & { readonly unplaced: number };

/** Series 10 and 11 alone; null where the project is refused. */
function draw(text: string): Some | null {
  const read = readBrief(text);
  if (!read.ok) return null;
  const laid = layOut(read.brief);
  if (!laid.ok) return null;
  const made = makeParts(read.brief, laid.layout);
  if (!made.ok) return null;
  const input = { brief: read.brief, layout: laid.layout, parts: made.parts, font: drawingFont };
  const drafted = [...catwalkDrawings(input), ...yardDrawings(input)].map((drawing) => draft(drawingFont, titleBlockOf(read.brief), drawing));
  return { ...input, sheets: drafted.map(({ sheet }) => sheet), unplaced: drafted.reduce((sum, { unplaced }) => sum + unplaced.length, 0) };
}

const example = readFileSync(new URL('../../shared/examples/winter-quill.penwright.json', import.meta.url), 'utf8');
/** The same with a deck high enough for a guard, in each jurisdiction. */
const tall = (jurisdiction: string): string => {
  const project = JSON.parse(example) as Record<'site' | 'fences' | 'catwalks', object>;
  return JSON.stringify({
    ...project, site: { ...project.site, jurisdiction },
    fences: { ...project.fences, chute: { left: { height: 96, rails: 8, solidTo: 66 }, right: { solidTo: 66 } } },
    catwalks: [{ run: 'chute', side: 'left', from: '2 ft', to: '30 ft', width: 24, deckHeight: 54 }],
  });
};
const SEED = 80;
const sets: readonly (readonly [string, Some])[] = [
  ['winter-quill', example] as const, ...['us', 'eu', 'uk', 'ontario'].map((one) => [`tall deck, ${one}`, tall(one)] as const),
  ...randomProjects(SEED, 24).map((project, i) => [`seed ${String(SEED)}, project ${String(i)}`, JSON.stringify(project)] as const),
].flatMap(([name, text]) => {
  const set = draw(text);
  return set === null ? [] : [[name, set] as const];
});

const view = (set: Some, name: string): Viewed => {
  const found = viewsNamed(set, name).filter((one) => one.view.id === name);
  expect([name, found.length]).toEqual([name, 1]);
  return found[0]!;
};
const least = (what: string, times: number): void => { expect([what, times > 0]).toEqual([what, true]); };

it('the random projects hold every subject', () => {
  const random = sets.filter(([name]) => name.startsWith('seed')).map(([, set]) => set);
  for (const has of [
    ({ layout }: Some) => layout.holdingPens.length > 0, ({ brief }: Some) => brief.sortPens.length > 0, ({ brief }: Some) => brief.squeezePad !== null,
    ({ layout }: Some) => layout.catwalks.length > 0, ({ brief }: Some) => brief.returnAlley !== null,
  ]) expect(random.some(has)).toBe(true);
});

it.each(sets)('%s: nothing is left without a place', (_, set) => { expect(set.unplaced).toBe(0); });

describe('the squeeze pad', () => {
  it.each(sets)('%s: slab and roof by length and width', (_, set) => {
    const pad = set.brief.squeezePad;
    if (pad === null) return;
    const shown = view(set, 'squeeze-pad');
    least('length', count(shown, across, pad.length));
    least('width', count(shown, upright, pad.width));
    if (pad.roof === null) return;
    least('roof length', count(shown, across, pad.roof.length));
    least('roof width', count(shown, upright, pad.roof.width));
  });
});

describe('a holding pen', () => {
  it.each(sets)('%s: sides, diagonal, drive alley, gate, bays, area and head', (_, set) => {
    for (const { brief: pen } of set.layout.holdingPens) {
      // A gate that fouls another does not stand: a finding says so.
      const stands = set.layout.openings.some(({ path }) => path === pen.path);
      const shown = view(set, `holding ${pen.name}`);
      least('length', count(shown, across, pen.length));
      least('width', count(shown, upright, pen.width));
      least('diagonal', count(shown, 'aligned', Math.hypot(pen.length, pen.width)));
      if (stands) least('gate', count(shown, across, pen.gate));
      least('drive alley', count(shown, upright, set.layout.runs.find(({ name }) => name === pen.name)!.width));
      for (const fence of set.layout.fences.filter(({ run }) => run === `${pen.name}-back` || run === `${pen.name}-end`)) {
        const posts = set.layout.posts.filter(({ run, side, kind }) => run === fence.run && side === fence.side && kind === 'post');
        const [first, second] = posts;
        // A gate of a random project may stand in it: its bays are then of several lengths.
        if (first === undefined || second === undefined || fence.spans.length > 1) continue;
        least(`bays of ${fence.run}`, count(shown, 'aligned', Math.hypot(second.at.x - first.at.x, second.at.y - first.at.y)));
      }
      const cells = shown.sheet.primitives.flatMap((item) => (item.kind === 'text' ? [item.text] : []));
      expect(rowsWith(shown.sheet, 'head that it is for').flat()).toContain(String(pen.head));
      expect(cells.some((text) => text.endsWith(set.brief.units === 'mm' ? ' m2' : ' ft2'))).toBe(true);
    }
  });
});

describe('the return alley', () => {
  it.each(sets)('%s: each run by its length or radius, and the clear width', (_, set) => {
    const way = set.brief.returnAlley;
    if (way === null) return;
    const shown = view(set, 'return-alley');
    for (const run of way.runs) {
      if (run.kind === 'straight') least('length', count(shown, 'aligned', run.length));
      else least('radius', count(shown, 'radius', run.insideRadius));
    }
    expect(count(shown, 'aligned', way.width)).toBeGreaterThanOrEqual(way.runs.length);
  });
});

describe('a sort pen', () => {
  it.each(sets)('%s: gate, alley and stretch', (_, set) => {
    for (const pen of set.brief.sortPens) {
      const shown = view(set, pen.name);
      const run = set.layout.runs.find(({ name }) => name === pen.name)!;
      least('alley', count(shown, upright, run.width));
      least('stretch', count(shown, across, run.length));
      if (set.layout.openings.some(({ path }) => path === pen.path)) least('gate', count(shown, across, pen.gate));
    }
  });
});

describe('a catwalk', () => {
  it.each(sets)('%s: at both ends deck height, width, rail over the deck and guard', (_, set) => {
    set.layout.catwalks.forEach((catwalk, i) => {
      for (const end of ['start', 'end']) {
        const shown = view(set, `section CW${String(i + 1)} ${end}`);
        least('width', count(shown, across, catwalk.brief.width));
        // Beside a ramp each part of the deck has a height of its own.
        if (catwalk.slope === 0 && catwalk.highest > 1e-6) least('deck', count(shown, upright, catwalk.highest));
        if (catwalk.guarded) least('guard', count(shown, upright, catwalk.guardHeight));
        const fence = set.layout.fences.find((one) => one.run === catwalk.stretches[end === 'start' ? 0 : catwalk.stretches.length - 1]!.run && one.side === catwalk.side)!;
        if (fence.brief.height - catwalk.deckHeight > 1e-6) least('rail', count(shown, upright, fence.brief.height - catwalk.deckHeight));
      }
    });
  });

  it.each(sets)('%s: every rise and tread of its steps', (_, set) => {
    set.layout.catwalks.forEach((catwalk, i) => {
      for (const { risers, riser, tread, at, height } of catwalk.flights.filter((flight) => flight.risers > 1)) {
        const shown = view(set, `steps CW${String(i + 1)} ${at}`);
        for (let n = 1; n <= risers; n += 1) least(`rise ${String(n)}`, count(shown, upright, n * riser));
        for (let n = 1; n < risers; n += 1) least(`tread ${String(n)}`, count(shown, across, n * tread));
        expect(Math.abs(risers * riser - height)).toBeLessThan(1e-6);
      }
    });
  });

  it('has a guard, steps with a rail and its height where the deck is high', () => {
    for (const [name, set] of sets.filter(([one]) => one.startsWith('tall'))) {
      const [catwalk] = set.layout.catwalks;
      expect([name, catwalk!.guarded, catwalk!.flights.every(({ risers }) => risers > 1)]).toEqual([name, true, true]);
      const rails = set.parts.pieces.filter(({ place }) => place.kind === 'catwalk' && place.part === 'step-rail');
      expect(rails.length).toBeGreaterThan(0);
      for (const { at, height } of catwalk!.flights) {
        const tops = rails.flatMap(({ place }) => (place.kind === 'catwalk' && place.flight?.at === at ? place.flight.side.map(({ y }) => y) : []));
        const over = Math.max(...tops) - height;
        expect(view(set, `steps CW1 ${at}`).dimensions.some((item) => upright(item) && same(item.value, over))).toBe(true);
      }
    }
  });
});
