import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { chooseFile } from '../desk/choose-file.ts';
import { readTextFile } from '../desk/read-text.ts';
import { useStore } from '../project/store.ts';
import './earlier-issue.css';

/** Which earlier issue the drawings are compared with: its project file is chosen, and can be left again. */
export function EarlierIssue(): ReactElement {
  const { earlier } = useDeskWindow();
  const state = useStore(earlier.state);
  const choose = async (): Promise<void> => {
    const file = await chooseFile();
    if (file === null) return;
    const read = await readTextFile(file);
    await (read.ok ? earlier.choose(file.name, read.text) : earlier.refuse(file.name, read.message));
  };
  return (
    <section className="earlier-issue" aria-label={say('earlier.title')}>
      <h2>{say('earlier.title')}</h2>
      {state.kind === 'none' ? <p className="faint">{say('earlier.none')}</p> : null}
      {state.kind === 'chosen' ? <p role="status">{say('earlier.chosen', { name: state.name })}</p> : null}
      {state.kind === 'refused' ? <p role="alert" className="attention">{say('earlier.refused', { name: state.name, reason: state.reason })}</p> : null}
      <div className="earlier-ways">
        <button type="button" onClick={() => void choose()}>{say('earlier.choose')}</button>
        {state.kind === 'none' ? null : <button type="button" onClick={() => void earlier.drop()}>{say('earlier.drop')}</button>}
      </div>
    </section>
  );
}
