import { type ReactElement } from 'react';
import { useStore } from '../project/store.ts';
import { Begin } from '../project/Begin.tsx';
import { ProjectBar } from '../project/ProjectBar.tsx';
import { PLACE_VIEWS } from '../places/place-views.tsx';
import './app.css';
import { useDeskWindow } from './desk-window.ts';
import { PlaceList } from './PlaceList.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import { WalkStrip } from './WalkStrip.tsx';

/** The window: places along the top, the place itself, the walk of the cattle and the title block below. */
export function App(): ReactElement {
  const { session, place } = useDeskWindow();
  const open = useStore(session);
  const here = useStore(place);
  if (open === null) return <Begin />;
  const View = PLACE_VIEWS[here];
  return (
    <div className="app">
      <header className="app-head">
        <PlaceList />
        <ProjectBar />
      </header>
      <main className="app-main" key={open.opened}>
        <View />
      </main>
      <WalkStrip />
      <TitleBlock />
    </div>
  );
}
