import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { present } from '../project/history.ts';
import { valueAt } from '../project/json-path.ts';
import { isUnsaved } from '../project/session.ts';
import { useStore } from '../project/store.ts';
import { useDeskWindow } from './desk-window.ts';
import { useTally } from './tally.ts';

/** What a title block says of a drawing, said of the project on the screen. */
export function TitleBlock(): ReactElement | null {
  const { session, worked } = useDeskWindow();
  const open = useStore(session);
  const { laid } = useStore(worked);
  const tally = useTally();
  if (open === null) return null;
  const project = present(open.history);
  const text = (path: string): string => {
    const value = valueAt(project, path);
    return typeof value === 'string' ? value : '';
  };
  return (
    <footer className="title-block">
      <div><small>{say('window.block.project')}</small><span>{text('title') || open.name}</span></div>
      <div><small>{say('window.block.revision')}</small><span>{text('revision.letter') || 'A'}</span></div>
      <div><small>{say('window.block.units')}</small><span>{say(laid?.units === 'mm' ? 'window.block.mm' : 'window.block.in')}</span></div>
      <div>
        <small>{say('window.block.findings')}</small>
        <span role="status" className={tally.fix + tally.faults > 0 ? 'attention' : undefined}>
          {tally.faults > 0 ? say('window.tally.faults', { count: tally.faults }) : say('window.block.tally', { fix: tally.fix, look: tally.look })}
        </span>
      </div>
      <div><small>{say('window.block.file')}</small><span>{isUnsaved(open) ? say('window.block.unsaved', { name: open.name }) : open.name}</span></div>
      <p className="caution">{say('window.caution')}</p>
    </footer>
  );
}
