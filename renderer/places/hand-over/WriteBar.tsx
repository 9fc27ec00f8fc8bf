import { type ReactElement, useState } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useTally } from '../../app/tally.ts';
import { useStore } from '../../project/store.ts';
import { FixDialog } from './FixDialog.tsx';
import { PackageResult } from './PackageResult.tsx';
import { type PackageOrder, type PackageState } from './packages.ts';
import { type Ready } from './use-ready.ts';

/** The writing: where to, how far it is, and what came of it. A design that says Fix is written only by somebody who was told. */
export function WriteBar({ order, ready }: { readonly order: PackageOrder; readonly ready: Ready }): ReactElement {
  const { desk, packages } = useDeskWindow();
  const state = useStore(packages.state);
  const { fix } = useTally();
  const [asking, setAsking] = useState(false);
  const write = (): void => {
    setAsking(false);
    void packages.write(order);
  };
  const making = state.kind === 'making';
  return (
    <section className="hand-over-write" aria-label={say('place-hand-over.writing')}>
      {making || state.kind === 'writing' ? (
        <>
          <div className="hand-over-progress">
            <label htmlFor="hand-over-progress">
              {making ? progressWords(state) : say('place-hand-over.putting', { name: state.name })}
            </label>
            <progress id="hand-over-progress" max={making && state.total > 0 ? state.total : 1} value={making ? state.done : 1} />
          </div>
          <button type="button" disabled={!making} onClick={packages.cancel}>{say('place-hand-over.cancel')}</button>
        </>
      ) : (
        <>
          <PackageResult state={state} />
          <button type="button" className="main" disabled={ready !== 'ready'} onClick={() => { if (fix > 0) setAsking(true); else write(); }}>
            {say(desk.where === 'desktop' ? 'place-hand-over.write' : 'place-hand-over.write-zip')}
          </button>
          {ready === 'ready' ? null : <span className="hand-over-why">{say(`place-hand-over.not.${ready}`)}</span>}
        </>
      )}
      {asking ? <FixDialog onLeave={() => { setAsking(false); }} onWrite={write} /> : null}
    </section>
  );
}

const progressWords = ({ done, total, path }: Extract<PackageState, { readonly kind: 'making' }>): string =>
  (done === 0 ? say('place-hand-over.beginning') : say('place-hand-over.making', { done, total, path }));
