import { type ReactElement, useState } from 'react';
import { isJsonObject } from '../../core/brief/json/types.ts';
import { parseJson } from '../../core/brief/json/parse-json.ts';
import { say } from '../../core/text/index.ts';
import { type Draft } from '../../electron/bridge/desk.ts';
import { useDeskWindow } from '../app/desk-window.ts';

/** One draft: what it is, when it was kept, and what becomes of it. Throwing it away takes two presses. */
export function DraftRow({ draft, onThrow }: { readonly draft: Draft; readonly onThrow: () => void }): ReactElement {
  const { projects } = useDeskWindow();
  const [sure, setSure] = useState(false);
  const name = draft.name === '' ? say('place-projects.begin.empty-name') : draft.name;
  return (
    <li>
      <div>
        <strong>{titleOf(draft.text) ?? name}</strong>
        <span>{draft.name === '' ? say('place-projects.begin.no-file') : draft.name}</span>
        <span className="faint">{say('place-projects.begin.kept', { when: draft.kept })}</span>
      </div>
      <button type="button" className="main" onClick={() => void projects.takeDraft(draft.id, name)}>{say('place-projects.begin.take')}</button>
      <button type="button" className={sure ? 'attention' : undefined} onBlur={() => { setSure(false); }} onClick={() => { if (sure) onThrow(); else setSure(true); }}>
        {say(sure ? 'place-projects.begin.throw-sure' : 'place-projects.begin.throw')}
      </button>
    </li>
  );
}

function titleOf(text: string): string | null {
  const { value } = parseJson(text);
  const title = isJsonObject(value) ? value['title'] : undefined;
  return typeof title === 'string' && title !== '' ? title : null;
}
