/** What to look at on each station of a plan, from what it holds. */
import { type Brief } from '../../brief/types.ts';
import { glareWords, lowSuns, runGlare, seeAhead, sunSite } from '../../checks/index.ts';
import { printSize } from '../../drafting/kit.ts';
import { type Layout, type Opening, type Run } from '../../layout/index.ts';
import { gateMarks } from '../../parts/index.ts';
import { say, type StringKey } from '../../text/index.ts';
import { type DrawInput } from '../input.ts';

/** A station of the walk, and what to look at there beside what any station is looked at for. */
export interface CheckStation {
  readonly run: string;
  readonly looks: readonly string[];
}

/** What to look for at every station; each has a column of boxes. */
export const EVERYWHERE: readonly StringKey[] = ['checklist.hangs', 'checklist.shines', 'checklist.shadow', 'checklist.sight'];

/** The part that a run belongs to: `chute` of `chute-2`. */
const partOf = (run: string): string => run.replace(/-\d+$/, '');

/** Every station, in walking order. Runs without a length and fences beside the walk are left out. */
export function checkStations({ brief, layout }: Pick<DrawInput, 'brief' | 'layout'>): readonly CheckStation[] {
  return layout.runs.filter((run) => run.length > 0 && run.aside !== true).map((run) => ({
    run: run.name,
    looks: [...ownItems(brief, layout, run), ...sunItem(brief, run), ...deckItem(layout, run), ...gateItems(layout, run)],
  }));
}

/** What this kind of run has. */
function ownItems(brief: Brief, layout: Layout, run: Run): readonly string[] {
  const ramp = layout.ramps.find((one) => one.name === run.name);
  if (ramp !== undefined) return [say(ramp.figures.surface.kind === 'stepped' ? 'checklist.steps' : 'checklist.cleats'), say('checklist.dock')];
  if (run.name === 'crowd-pen') return [say('checklist.drain')];
  if (run.name === 'junction') return [say('checklist.corner')];
  if (run.name === 'squeeze-pad') return [say('checklist.crew'), ...(brief.squeezePad === null || brief.squeezePad.roof === null ? [] : [say('checklist.roof')])];
  if (run.from === 0) {
    const { seen } = seeAhead(layout.runs);
    return [say('checklist.mouth', { seen: printSize(brief, seen) }), say('checklist.drain')];
  }
  if (run.from !== null && run.kind === 'arc') return [say('checklist.turn')];
  return partOf(run.name) === 'sort' ? [say('checklist.pens')] : [];
}

function sunItem(brief: Brief, run: Run): readonly string[] {
  const site = sunSite(brief);
  if (!('work' in site)) return [];
  const glare = runGlare(run, site.bearing, lowSuns(site));
  return glare.hours.length === 0 ? [] : [say('checklist.sun', { hours: glareWords(glare) })];
}

const deckItem = (layout: Layout, run: Run): readonly string[] =>
  (layout.catwalks.some(({ stretches }) => stretches.some((stretch) => stretch.run === run.name)) ? [say('checklist.catwalk')] : []);

function gateItems(layout: Layout, run: Run): readonly string[] {
  const marks = gateMarks(layout);
  const own = layout.openings.filter((opening) => opening.run === run.name).map((opening) => say(gateKey(opening), { mark: marks.get(opening.path) ?? '' }));
  return run.name === layout.crowdGate.run ? [say('checklist.crowd-gate', { mark: marks.get(layout.crowdGate.path) ?? '' }), ...own] : own;
}

const gateKey = (opening: Opening): StringKey => (opening.kind === 'backstop' ? `checklist.backstop.${opening.held}` : `checklist.${opening.kind}`);
