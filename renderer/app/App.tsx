import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useStore } from '../project/store.ts';
import { Begin } from '../project/Begin.tsx';
import { PageTitle } from '../project/PageTitle.tsx';
import { ProjectBar } from '../project/ProjectBar.tsx';
import { ProjectDialogs } from '../project/ProjectDialogs.tsx';
import { ProjectKeys } from '../project/ProjectKeys.tsx';
import { PLACE_VIEWS } from '../places/place-views.tsx';
import './app.css';
import { useStartFocus } from '../parts/use-start-focus.ts';
import { useDeskWindow } from './desk-window.ts';
import { Notice } from './Notice.tsx';
import { PlaceList } from './PlaceList.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { WalkStrip } from './WalkStrip.tsx';

/** The window: places along the top, the place itself, the walk of the cattle and the title block below. */
export function App(): ReactElement {
  const { session, place, projects } = useDeskWindow();
  const open = useStore(session);
  const here = useStore(place);
  const beginning = useStore(projects.beginning);
  const View = PLACE_VIEWS[here];
  const start = useStartFocus<HTMLDivElement>(open === null || beginning ? null : open.opened);
  const desk = open === null || beginning ? <Begin /> : (
    <div className="app" ref={start} tabIndex={-1}>
      <header className="app-head">
        <PlaceList />
        <ProjectBar />
      </header>
      <main className="app-main" key={open.opened}>
        <h1 className="unseen">{say(`window.place.${here}`)}</h1>
        <View />
      </main>
      <WalkStrip />
      <TitleBlock />
    </div>
  );
  return (
    <>
      {desk}
      <Notice />
      <PageTitle />
      <ProjectKeys />
      <ProjectDialogs />
    </>
  );
}
