import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { present } from '../../project/history.ts';
import { useStore } from '../../project/store.ts';
import { type PackageState } from './packages.ts';

const ALL = 'drawings/all.pdf';

/** What came of the last writing, and what may be done with it. */
export function PackageResult({ state }: { readonly state: PackageState }): ReactElement {
  switch (state.kind) {
    case 'none': case 'making': case 'writing':
      return <p className="hand-over-result faint">{say('place-hand-over.whole')}</p>;
    case 'stopped': return <p className="hand-over-result" role="status">{say('place-hand-over.stopped')}</p>;
    case 'refused':
      return <p className="hand-over-result attention" role="alert">{say('place-hand-over.refused')} {state.message}</p>;
    case 'faults':
      return <p className="hand-over-result attention" role="alert">{say('place-hand-over.faults', { count: state.faults.length })}</p>;
    case 'written': return <Written state={state} />;
  }
}

function Written({ state }: { readonly state: Extract<PackageState, { readonly kind: 'written' }> }): ReactElement {
  const { desk, session, projects } = useDeskWindow();
  const open = useStore(session);
  const { target, files, of, newMarks } = state;
  const all = files.find((file) => file.path === ALL);
  const refuse = (reply: { readonly ok: boolean; readonly message?: string }): void => {
    if (!reply.ok) void projects.refuse(reply.message ?? '');
  };
  const changed = open !== null && present(open.history) !== of;
  return (
    <div className="hand-over-result" role="status">
      <div className="hand-over-words">
        <p><strong>{say('place-hand-over.written', { count: files.length, name: target.name })}</strong></p>
        {newMarks ? <p>{say('place-hand-over.marks')}</p> : null}
        {changed ? <p className="attention">{say('place-hand-over.changed')}</p> : null}
      </div>
      <div className="hand-over-ways">
        {desk.where === 'desktop'
          ? <button type="button" onClick={() => void desk.showPackage(target.folder).then(refuse)}>{say('place-hand-over.open-folder')}</button>
          : null}
        {all === undefined
          ? null
          : <button type="button" onClick={() => void desk.print(all.bytes, `${target.name} ${ALL}`).then(refuse)}>{say('place-hand-over.print')}</button>}
      </div>
    </div>
  );
}
