import { useCallback, useEffect, useRef, useState, type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { GroupFaults } from '../../parts/form/GroupFaults.tsx';
import { fieldOfRun } from '../../parts/form/run-names.ts';
import { stepsOrNull } from '../../parts/form/part-words.ts';
import { projectOf } from '../../parts/field/use-project.ts';
import { useStore } from '../../project/store.ts';
import '../../parts/form/form.css';
import './brief.css';
import { ChapterList } from './ChapterList.tsx';
import { ChapterPart } from './ChapterPart.tsx';
import { CHAPTERS, topNames } from './chapters.ts';
import { FaultSummary } from './FaultSummary.tsx';
import { reveal } from './reveal.ts';

/** The brief as a form: everything that the project file can say, in the order in which it is thought through. */
export function BriefPlace(): ReactElement {
  const { session, selection, select } = useDeskWindow();
  const form = useRef<HTMLDivElement>(null);
  const [here, setHere] = useState(CHAPTERS[0]?.id ?? '');
  const { field, run } = useStore(selection);

  // What other places lead to: a run first, and a field over it.
  useEffect(() => {
    const path = run === null ? null : fieldOfRun(projectOf(session), run);
    if (path !== null && form.current !== null) reveal(form.current, path, false);
  }, [run, session]);
  useEffect(() => {
    if (field !== null && stepsOrNull(field) !== null && form.current !== null) reveal(form.current, field, true);
  }, [field]);

  const seek = useCallback((path: string): void => {
    select({ field: path });
    // A second time to the same field, of which nothing has changed.
    if (form.current !== null) reveal(form.current, path, true);
  }, [select]);
  const jump = useCallback((id: string): void => {
    const chapter = document.getElementById(`chapter-${id}`);
    chapter?.scrollIntoView({ block: 'start' });
    chapter?.focus({ preventScroll: true });
    setHere(id);
  }, []);
  const scrolled = (): void => {
    const top = (form.current?.getBoundingClientRect().top ?? 0) + 80;
    const passed = CHAPTERS.filter(({ id }) => (document.getElementById(`chapter-${id}`)?.getBoundingClientRect().top ?? Infinity) <= top);
    setHere(passed.at(-1)?.id ?? CHAPTERS[0]?.id ?? '');
  };
  return (
    <div className="brief">
      <ChapterList here={here} go={jump} />
      <div className="brief-form" ref={form} onScroll={scrolled}>
        <p className="faint">{say('place-brief.how')}</p>
        <FaultSummary seek={seek} />
        <GroupFaults path="" rows={topNames} />
        {CHAPTERS.map((chapter) => <ChapterPart key={chapter.id} chapter={chapter} />)}
      </div>
    </div>
  );
}
