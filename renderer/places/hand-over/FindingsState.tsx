import { type ReactElement } from 'react';
import { inOrder } from '../../../core/checks/index.ts';
import { CAUTIONS } from '../../../core/drawings/cautions.ts';
import { say, type StringKey } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useTally } from '../../app/tally.ts';
import { whereWords } from '../../parts/finding-words.ts';
import { useStore } from '../../project/store.ts';

/** How the design stands before it is handed over: its faults, what says Fix, and what nobody may forget. */
export function FindingsState(): ReactElement {
  const { worked, go } = useDeskWindow();
  const { laid, answer } = useStore(worked);
  const tally = useTally();
  const faults = answer?.faults ?? [];
  const findings = laid?.findings ?? [];
  const fix = inOrder(findings).find((group) => group.result === 'fix')?.findings ?? [];
  return (
    <div className="hand-over-column">
      <section aria-labelledby="hand-over-findings">
        <h2 id="hand-over-findings">{say('place-hand-over.findings')}</h2>
        {faults.length > 0 ? (
          <>
            <p className="attention">{say('place-hand-over.faults', { count: faults.length })}</p>
            <button type="button" onClick={() => { go('brief', { field: faults[0]?.path ?? null }); }}>{say('place-hand-over.to-brief')}</button>
          </>
        ) : (
          <>
            <p className={fix.length > 0 ? 'attention' : undefined}>
              {say(fix.length > 0 ? 'place-hand-over.some-fix' : 'place-hand-over.no-fix', { fix: tally.fix, look: tally.look })}
            </p>
            <ul className="hand-over-fix">
              {fix.map((finding) => (
                <li key={findings.indexOf(finding)}>
                  <button type="button" onClick={() => { go('check', { finding: findings.indexOf(finding) }); }}>
                    <span>{say(`rule.${finding.id}` as StringKey)}</span>
                    <small>{whereWords(finding)}</small>
                  </button>
                </li>
              ))}
            </ul>
          </>
        )}
      </section>
      <section aria-labelledby="hand-over-cautions">
        <h2 id="hand-over-cautions">{say('place-hand-over.cautions')}</h2>
        <ul className="hand-over-cautions">{CAUTIONS.map((key) => <li key={key}>{say(key)}</li>)}</ul>
      </section>
    </div>
  );
}
