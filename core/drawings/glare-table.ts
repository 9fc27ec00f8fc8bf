import { type Run } from '../layout/index.ts';
import { glareWords, lowSuns, runGlare, sunSite, trueBearing } from '../checks/index.ts';
import { type Column } from '../drafting/model.ts';
import { say } from '../text/index.ts';
import { type DrawInput } from './input.ts';

export interface GlareTable {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

/** When each run of the walk is walked into a low sun; null where the brief leaves open what the sun's place follows from. */
export function glareTable({ brief, layout }: Pick<DrawInput, 'brief' | 'layout'>): GlareTable | null {
  const site = sunSite(brief);
  if (!('work' in site)) return null;
  const suns = lowSuns(site);
  const column = (title: string, align: 'start' | 'end' = 'start'): Column => ({ title, align });
  return {
    columns: [
      column(say('drawings.run.name')), column(say('drawings.glare.heading'), 'end'), column(say('drawings.glare.least'), 'end'), column(say('drawings.glare.hours')),
    ],
    rows: layout.runs.filter((run) => run.length > 0 && run.aside !== true).map((run) => {
      const glare = runGlare(run, site.bearing, suns);
      return [run.name, headingText(run, site.bearing), glare.least === null ? '' : `${glare.least.toFixed(0)}°`, glareWords(glare)];
    }),
  };
}

/** A true bearing as three figures, those of both ends of a run that turns. */
function headingText(run: Run, bearing: Parameters<typeof trueBearing>[1]): string {
  const text = (heading: Run['headings'][0]): string => `${String(Math.round(trueBearing(heading, bearing)) % 360).padStart(3, '0')}°`;
  const [from, to] = run.headings.map(text) as [string, string];
  return from === to || run.name === 'crowd-pen' ? to : say('drawings.glare.turn', { from, to });
}
