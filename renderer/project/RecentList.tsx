import { type ReactElement, useEffect, useState } from 'react';
import { say } from '../../core/text/index.ts';
import { type RecentProject } from '../../electron/bridge/desk.ts';
import { useDeskWindow } from '../app/desk-window.ts';

/** The projects that were open lately, where the machine keeps them. */
export function RecentList(): ReactElement | null {
  const { desk, projects } = useDeskWindow();
  const [recent, setRecent] = useState<readonly RecentProject[]>([]);
  useEffect(() => {
    let shown = true;
    void desk.recentProjects().then((found) => { if (shown) setRecent(found); });
    return () => { shown = false; };
  }, [desk]);
  if (recent.length === 0) return null;
  return (
    <>
      <h3>{say('place-projects.begin.recent')}</h3>
      <ul className="begin-list">
        {recent.map(({ id, name, folder }) => (
          <li key={id}>
            <button type="button" onClick={() => void projects.openRecent(id)}>
              <span>{name}</span>
              {folder === '' ? null : <small className="faint">{folder}</small>}
            </button>
          </li>
        ))}
      </ul>
    </>
  );
}
