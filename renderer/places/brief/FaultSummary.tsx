import { type ReactElement } from 'react';
import { fieldAt, labelOf } from '../../../core/brief/format/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useAllFaults } from '../../parts/field/use-faults.ts';
import { stepsOrNull } from '../../parts/form/part-words.ts';
import { chapterOf } from './chapters.ts';

/** Where a fault is, as a person calls it: `Single-file chute, Angle (chute.runs[1].angle)`. */
function placeWords(path: string): string {
  const chapter = chapterOf(path);
  const steps = stepsOrNull(path);
  const field = steps === null || steps.length === 0 ? null : fieldAt(steps);
  if (chapter === null || field === null) return path === '' ? say('fault-place.file') : path;
  return say('place-brief.place', { chapter: say(chapter.title), field: labelOf(field), path });
}

/** What is wrong with the project, each a way to its field. */
export function FaultSummary({ seek }: { readonly seek: (path: string) => void }): ReactElement | null {
  const { worked } = useDeskWindow();
  const faults = useAllFaults();
  if (faults.length === 0) return null;
  const older = worked.get().laid !== null;
  return (
    <section className="fault-summary" aria-label={say('place-brief.faults')}>
      <h2>{say('window.tally.faults', { count: faults.length })}</h2>
      <p>{say(older ? 'place-brief.older-plan' : 'place-brief.no-plan')}</p>
      <ul>
        {faults.map((fault) => (
          <li key={`${fault.path} ${fault.words}`}>
            {stepsOrNull(fault.path) === null || fault.path === '' ? <span>{placeWords(fault.path)}</span> : (
              <button type="button" className="quiet" onClick={() => { seek(fault.path); }}>{placeWords(fault.path)}</button>
            )}
            <span className="attention">{fault.words}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
