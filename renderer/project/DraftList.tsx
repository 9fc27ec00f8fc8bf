import { type ReactElement, useEffect, useState } from 'react';
import { say } from '../../core/text/index.ts';
import { type Draft } from '../../electron/bridge/desk.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { DraftRow } from './DraftRow.tsx';

/** Work that was not saved when an earlier window ended. */
export function DraftList(): ReactElement | null {
  const { desk, projects } = useDeskWindow();
  const [drafts, setDrafts] = useState<readonly Draft[]>([]);
  useEffect(() => {
    let shown = true;
    void desk.drafts().then((found) => { if (shown) setDrafts(found); });
    return () => { shown = false; };
  }, [desk]);
  if (drafts.length === 0) return null;
  const thrown = async (draft: Draft): Promise<void> => {
    const reply = await desk.throwDraft(draft.id);
    if (reply.ok) setDrafts((all) => all.filter((other) => other !== draft));
    else await projects.refuse(reply.message);
  };
  return (
    <section className="begin-drafts" aria-labelledby="begin-drafts">
      <h2 id="begin-drafts" className="attention">{say('place-projects.begin.drafts')}</h2>
      <p>{say('place-projects.begin.drafts-help')}</p>
      <ul>{drafts.map((draft) => <DraftRow key={draft.id} draft={draft} onThrow={() => void thrown(draft)} />)}</ul>
    </section>
  );
}
