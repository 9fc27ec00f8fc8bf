import { type ReactElement } from 'react';
import { inOrder } from '../../../core/checks/index.ts';
import { say, type StringKey } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { Dialog } from '../../parts/Dialog.tsx';
import { whereWords } from '../../parts/finding-words.ts';
import { useStore } from '../../project/store.ts';

/** Said before a package is written of a design that says Fix. */
export function FixDialog({ onLeave, onWrite }: { readonly onLeave: () => void; readonly onWrite: () => void }): ReactElement {
  const { worked } = useDeskWindow();
  const { laid } = useStore(worked);
  const fix = inOrder(laid?.findings ?? []).find((group) => group.result === 'fix')?.findings ?? [];
  return (
    <Dialog
      title={say('place-hand-over.fix.title')}
      onLeave={onLeave}
      answers={
        <>
          <button type="button" onClick={onLeave}>{say('place-hand-over.fix.back')}</button>
          <button type="button" onClick={onWrite}>{say('place-hand-over.fix.write')}</button>
        </>
      }
    >
      <p className="attention">{say('place-hand-over.fix.words', { count: fix.length })}</p>
      <ul>{fix.map((finding, index) => <li key={index}>{say(`rule.${finding.id}` as StringKey)} <small className="faint">{whereWords(finding)}</small></li>)}</ul>
    </Dialog>
  );
}
