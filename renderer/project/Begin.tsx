import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import './begin.css';
import { DraftList } from './DraftList.tsx';
import { EMPTY_BRIEF } from './empty-brief.ts';
import { ExampleList } from './ExampleList.tsx';
import { useStartFocus } from '../parts/use-start-focus.ts';
import { LightButton } from './LightButton.tsx';
import { RecentList } from './RecentList.tsx';
import { useStore } from './store.ts';

/** What to begin with: work that was not saved, a project of one's own, nothing, or an example. */
export function Begin(): ReactElement {
  const { session, projects } = useDeskWindow();
  const open = useStore(session);
  const start = useStartFocus<HTMLElement>('begin');
  return (
    <main className="begin" ref={start} tabIndex={-1}>
      <header className="begin-head">
        <div>
          <h1>{say('window.name')}</h1>
          <p>{say('place-projects.begin.lead')}</p>
        </div>
        <LightButton />
        {open === null ? null : <button type="button" className="main" onClick={projects.back}>{say('place-projects.begin.back', { title: open.name })}</button>}
      </header>
      <DraftList />
      <div className="begin-ways">
        <section aria-labelledby="begin-own">
          <h2 id="begin-own">{say('place-projects.begin.own')}</h2>
          <button type="button" className="main" onClick={() => void projects.openFile()}>{say('place-projects.open')}</button>
          <p className="faint">{say('place-projects.begin.open-help')}</p>
          <button type="button" onClick={() => void projects.openNew(EMPTY_BRIEF, say('place-projects.begin.empty-name'))}>{say('place-projects.begin.empty')}</button>
          <p className="faint">{say('place-projects.begin.empty-help')}</p>
          <RecentList />
        </section>
        <section aria-labelledby="begin-examples">
          <h2 id="begin-examples">{say('place-projects.begin.examples')}</h2>
          <p className="faint">{say('place-projects.begin.examples-help')}</p>
          <ExampleList />
        </section>
      </div>
      <p className="caution">{say('window.caution')}</p>
    </main>
  );
}
