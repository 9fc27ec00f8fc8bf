import { type ReactElement } from 'react';
import { dangerOf, type Finding, printFigures } from '../../../core/checks/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { fieldOfFinding } from '../../parts/field-of-finding.ts';
import { useProject } from '../../parts/field/use-project.ts';
import { fieldName, limitWords, whereWords } from '../../parts/finding-words.ts';
import { type Units } from '../../worker/protocol.ts';
import { ruleWords, trustWords } from './rule-words.ts';

export interface FindingDetailProps {
  readonly finding: Finding;
  /** Its place in the list of findings. */
  readonly index: number;
  readonly units: Units;
  /** The runs that its place names. */
  readonly runs: readonly string[];
  /** Every run of the design. */
  readonly all: readonly string[];
}

/** All of one finding, and the ways to its place and to the field behind it. */
export function FindingDetail({ finding, index, units, runs, all }: FindingDetailProps): ReactElement {
  const { go } = useDeskWindow();
  const field = useProject((project) => fieldOfFinding(finding, project, all));
  const { measured } = printFigures(finding, units);
  const facts = [
    [say('place-check.measured'), measured ?? say('place-check.no-figure')],
    [say('place-check.limit'), limitWords(finding, units)],
    [say('place-check.where'), whereWords(finding)],
    [say('place-check.danger'), say(`place-check.danger.${dangerOf(finding.id)}`)],
    [say('place-check.trust'), trustWords(finding)],
    [say('place-check.source'), finding.source === '' ? say('place-check.no-source') : finding.source],
    [say('place-check.rule'), finding.id],
  ] as const;
  return (
    <section className="finding-detail" aria-label={say('place-check.chosen')} aria-live="polite">
      <h2><span className={`result result-${finding.result}`}>{say(`result.${finding.result}`)}</span> {ruleWords(finding)}</h2>
      <dl>{facts.map(([name, value]) => <div key={name}><dt>{name}</dt><dd>{value}</dd></div>)}</dl>
      <div className="finding-ways">
        {finding.at === null && runs.length === 0 ? null : (
          <button type="button" className="main" onClick={() => { go('lay-out', { finding: index, run: runs[0] ?? null }); }}>{say('place-check.go-place')}</button>
        )}
        {field === null ? null : <button type="button" onClick={() => { go('brief', { field }); }}>{say('place-check.go-field', { field: fieldName(field), path: field })}</button>}
      </div>
    </section>
  );
}
