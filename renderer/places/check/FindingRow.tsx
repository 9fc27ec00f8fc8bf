import { type ReactElement, useEffect, useRef } from 'react';
import { dangerOf, type Finding } from '../../../core/checks/index.ts';
import { say } from '../../../core/text/index.ts';
import { figuresWords, whereWords } from '../../parts/finding-words.ts';
import { type Units } from '../../worker/protocol.ts';
import { ruleWords, trustWords } from './rule-words.ts';

export interface FindingRowProps {
  readonly finding: Finding;
  readonly units: Units;
  readonly chosen: boolean;
  onChoose(): void;
}

/** One finding: its result in a word, what was asked, measure against limit, where, and how far to trust it. */
export function FindingRow({ finding, units, chosen, onChoose }: FindingRowProps): ReactElement {
  const row = useRef<HTMLButtonElement>(null);
  // Chosen elsewhere, on the plan: it comes into sight here.
  useEffect(() => {
    if (chosen) row.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  return (
    <button ref={row} type="button" className="finding" aria-pressed={chosen} onClick={onChoose}>
      <b className={`result result-${finding.result}`}>{say(`result.${finding.result}`)}</b>
      <span className="finding-rule">{ruleWords(finding)}</span>
      <span className="finding-figures">{figuresWords(finding, units)}</span>
      <span className="finding-where">{whereWords(finding)}</span>
      {finding.result === 'ok' ? null : <small className="finding-danger">{say(`place-check.danger.${dangerOf(finding.id)}`)}</small>}
      <small className="finding-trust">{[trustWords(finding), finding.source].filter((part) => part !== '').join(': ')}</small>
    </button>
  );
}
