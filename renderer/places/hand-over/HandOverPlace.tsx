import { type ReactElement, useState } from 'react';
import { BUILT_KINDS, type PackageKind } from '../../../core/package/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { EarlierIssue } from '../../parts/EarlierIssue.tsx';
import { useStore } from '../../project/store.ts';
import { type Units } from '../../worker/protocol.ts';
import { FindingsState } from './FindingsState.tsx';
import './hand-over.css';
import { PackageContents } from './PackageContents.tsx';
import { RevisionFields } from './RevisionFields.tsx';
import { useReady } from './use-ready.ts';
import { WriteBar } from './WriteBar.tsx';

/** What the package will hold, what it says of itself, how the design stands, and then the writing of it. */
export function HandOverPlace(): ReactElement {
  const { packages, earlier } = useDeskWindow();
  const compared = useStore(earlier.state);
  const [kinds, setKinds] = useState<readonly PackageKind[]>(BUILT_KINDS);
  const [units, setUnits] = useState<Units | null>(null);
  const ready = useReady();
  const state = useStore(packages.state);
  const busy = state.kind === 'making' || state.kind === 'writing';
  // All of it is asked for as all of it, as the command is called without a choice.
  const only = BUILT_KINDS.every((kind) => kinds.includes(kind)) ? null : kinds;
  return (
    <div className="hand-over">
      <div className="hand-over-columns">
        <fieldset className="hand-over-column" disabled={busy}>
          <legend className="unseen">{say('place-hand-over.choose')}</legend>
          <RevisionFields />
          <PackageContents kinds={kinds} onKinds={setKinds} units={units} onUnits={setUnits} />
          <EarlierIssue />
        </fieldset>
        <FindingsState />
      </div>
      <WriteBar order={{ only, units, since: compared.kind === 'chosen' ? compared.text : null }} ready={kinds.length === 0 ? 'nothing' : ready} />
    </div>
  );
}
