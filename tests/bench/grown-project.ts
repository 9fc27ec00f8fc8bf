import { readFileSync } from 'node:fs';
import { createPipeline, type Design } from '../../core/package/index.ts';
import { type Font } from '../../core/drafting/font.ts';

const DEMO = new URL('../../shared/examples/juniper-flat.penwright.json', import.meta.url);

interface RunJson {
  kind: 'straight' | 'arc';
  length?: number;
  insideRadius?: string;
  angle?: number;
  hand?: 'left' | 'right';
}

/** An alley run may be this long, inches (project format). */
const LONGEST_RUN = 2400;

const baysOf = (design: Design): number => design.layout.fences.reduce((sum, fence) => sum + fence.spans.reduce((bays, span) => bays + span.posts.length - 1, 0), 0);

/**
 * The demo with so many times its panels: its chute walked again and again, the turns by turns to the right and to the left, and the
 * alley made longer until the panels are as many. `radius` is the crowd pen's, inches.
 */
export function grownProject(font: Font, times: number): { readonly text: string; readonly panels: number } {
  const project = JSON.parse(readFileSync(DEMO, 'utf8')) as { title: string; alley: { runs: RunJson[] }; chute: { runs: RunJson[] } };
  const panels = (alley: number): number => {
    project.alley.runs = Array.from({ length: Math.ceil(alley / LONGEST_RUN) }, () => ({ kind: 'straight', length: alley / Math.ceil(alley / LONGEST_RUN) }));
    return baysOf(designOf(font, JSON.stringify(project)));
  };
  const wanted = panels(240) * times;
  // Where two turns of the chute join, the straight after one and the straight before the next are one run.
  project.chute.runs = [
    { kind: 'straight', length: 120 },
    ...Array.from({ length: times }, (_, index): RunJson[] => [
      { kind: 'arc', insideRadius: '16 ft', angle: 90, hand: index % 2 === 0 ? 'right' : 'left' },
      { kind: 'straight', length: index === times - 1 ? 72 : 192 },
    ]).flat(),
  ];
  let alley = 240;
  while (panels(alley) < wanted) alley += 96;
  return { text: JSON.stringify(project), panels: panels(alley) };
}

/** A project's text, read and set out. Throws where it has a fault: the bench's own projects have none. */
export function designOf(font: Font, text: string): Design {
  const pipeline = createPipeline(font);
  const read = pipeline.read(text, null);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  const worked = pipeline.design(read.brief);
  if (!worked.ok) throw new Error(JSON.stringify(worked.faults));
  return worked.design;
}
