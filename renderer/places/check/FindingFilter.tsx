import { type ReactElement } from 'react';
import { type Finding, type Result } from '../../../core/checks/index.ts';
import { say } from '../../../core/text/index.ts';

export type Hidden = readonly Result[];

export interface FindingFilterProps {
  readonly findings: readonly Finding[];
  readonly hidden: Hidden;
  readonly run: string | null;
  onHide(hidden: Hidden): void;
  onAllRuns(): void;
}

const RESULTS: readonly Result[] = ['fix', 'look', 'ok'];

/** Which findings are shown: by result, each with its count, and by the station that is looked at. */
export function FindingFilter({ findings, hidden, run, onHide, onAllRuns }: FindingFilterProps): ReactElement {
  return (
    <div className="check-filter" role="group" aria-label={say('place-check.results')}>
      {RESULTS.map((result) => {
        const shown = !hidden.includes(result);
        const count = findings.filter((finding) => finding.result === result).length;
        return (
          <button
            key={result}
            type="button"
            className={`result-${result}`}
            aria-pressed={shown}
            onClick={() => { onHide(shown ? [...hidden, result] : hidden.filter((one) => one !== result)); }}
          >
            {say('place-check.count', { result: say(`result.${result}`), count })}
          </button>
        );
      })}
      {run === null
        ? <span className="faint">{say('place-check.runs-by')}</span>
        : <><b>{say('place-check.run', { run })}</b><button type="button" onClick={onAllRuns}>{say('place-check.all-runs')}</button></>}
    </div>
  );
}
