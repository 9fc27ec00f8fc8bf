import { type ReactElement } from 'react';
import { type Brief, readBrief } from '../../core/brief/index.ts';
import { say } from '../../core/text/index.ts';
import { printLength } from '../../core/units/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { ExamplePlan } from './ExamplePlan.tsx';
import { type Example, EXAMPLES } from './examples.ts';

/** The examples, each with what it is: the person takes a copy. */
export function ExampleList(): ReactElement {
  const { projects } = useDeskWindow();
  return (
    <ul className="begin-list begin-examples">
      {EXAMPLES.map((example) => {
        const about = aboutOf(example);
        return (
          <li key={example.name}>
            <button type="button" onClick={() => void projects.openNew(example.text, example.name)}>
              <span className="begin-about">
                <strong>{about.brief.title}</strong>
                {about.lines.map((line) => <span key={line}>{line}</span>)}
              </span>
              <ExamplePlan brief={about.brief} />
            </button>
          </li>
        );
      })}
    </ul>
  );
}

/** What an example is, in lines. Throws where one that comes with the program has a fault. */
function aboutOf({ name, text }: Example): { readonly brief: Brief; readonly lines: readonly string[] } {
  const read = readBrief(text);
  if (!read.ok) throw new Error(`the example ${name} has faults`);
  const { brief } = read;
  const what = [
    ...(brief.site.volume === null ? [] : [say(`place-projects.begin.volume.${brief.site.volume}`)]),
    say(`place-projects.begin.kind.${brief.cattle.kind}`),
    say(`place-projects.begin.${brief.units}`),
    say('place-projects.begin.hand', { hand: brief.crowdPen.hand }),
  ].join(', ');
  const sizes = say('place-projects.begin.sizes', {
    radius: printLength(brief.crowdPen.radius, brief.units),
    width: printLength(brief.chute.width, brief.units, 'inches'),
    runs: brief.chute.runs.length,
    height: printLength(brief.fences.crowdPen.height, brief.units, 'inches'),
  });
  return { brief, lines: [what, sizes] };
}
