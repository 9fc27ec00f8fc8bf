import { type ReactElement } from 'react';
import { namedRuns } from '../../../core/checks/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { useKept } from '../../worker/kept.ts';
import { CapacityList } from './CapacityList.tsx';
import { Cautions } from './Cautions.tsx';
import './check.css';
import { Defaults } from './Defaults.tsx';
import { FindingDetail } from './FindingDetail.tsx';
import { FindingFilter, type Hidden } from './FindingFilter.tsx';
import { FindingList } from './FindingList.tsx';
import { numbered } from './numbered.ts';

const NONE_HIDDEN: Hidden = [];

/** What the design breaks, what to fix first, and what a person must be told before any of it is built. */
export function CheckPlace(): ReactElement {
  const { worked, selection, select, go } = useDeskWindow();
  const { laid, answer } = useStore(worked);
  const { finding: chosen, run } = useStore(selection);
  const [hidden, hide] = useKept<Hidden>('check hidden', NONE_HIDDEN);
  const fault = answer?.faults[0];
  if (laid === null) {
    return (
      <section className="check" aria-label={say('place-check.title')}>
        <div className="check-main">
          <p>{say('place-check.nothing')}</p>
          {fault === undefined ? null : <button type="button" onClick={() => { go('brief', { field: fault.path }); }}>{say('place-check.to-fault')}</button>}
        </div>
        <div className="check-side" tabIndex={0}><Cautions /></div>
      </section>
    );
  }
  const runs = laid.stations.runs.map((one) => one.run);
  const here = numbered(laid.findings).filter(({ finding }) => run === null || namedRuns(finding.where, runs).includes(run));
  const shown = here.filter(({ finding }) => !hidden.includes(finding.result));
  const detail = chosen === null ? undefined : laid.findings[chosen];
  return (
    <section className="check" aria-label={say('place-check.title')}>
      <div className="check-main">
        {fault === undefined ? null : (
          <p className="check-notice" role="status">
            <span>{say('place-check.last-good', { count: answer?.faults.length ?? 0 })}</span>
            <button type="button" onClick={() => { go('brief', { field: fault.path }); }}>{say('place-check.to-fault')}</button>
          </p>
        )}
        <FindingFilter findings={here.map(({ finding }) => finding)} hidden={hidden} onHide={hide} run={run} onAllRuns={() => { select({ run: null }); }} />
        <FindingList shown={shown} units={laid.units} chosen={chosen} onChoose={(index) => { select({ finding: index === chosen ? null : index }); }} />
        <Defaults defaults={answer?.defaults ?? []} />
      </div>
      <div className="check-side" tabIndex={0}>
        {detail === undefined || chosen === null
          ? <p className="faint">{say('place-check.choose')}</p>
          : <FindingDetail finding={detail} index={chosen} units={laid.units} runs={namedRuns(detail.where, runs)} all={runs} />}
        <CapacityList lines={laid.capacity} />
        <Cautions />
      </div>
    </section>
  );
}
