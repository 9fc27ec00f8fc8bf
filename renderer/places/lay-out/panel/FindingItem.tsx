import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { fieldOfFinding } from '../../../parts/field-of-finding.ts';
import { useProject } from '../../../parts/field/use-project.ts';
import { fieldName, figuresWords, whereWords } from '../../../parts/finding-words.ts';
import { useStore } from '../../../project/store.ts';
import { type Units } from '../../../worker/protocol.ts';
import { findingTitle, type ShownFinding } from '../shown-findings.ts';

/** One finding in the list: chosen, it is shown on the board, with its figures and the way to Check. */
export function FindingItem({ one, units, runs }: { readonly one: ShownFinding; readonly units: Units; readonly runs: readonly string[] }): ReactElement {
  const { selection, select, go } = useDeskWindow();
  const { finding: chosen } = useStore(selection);
  const here = chosen === one.index;
  const { finding } = one;
  const field = useProject((project) => fieldOfFinding(finding, project, runs));
  return (
    <li className="finding-item">
      <button type="button" className={finding.result === 'fix' ? 'plain attention' : 'plain'} aria-pressed={here} onClick={() => { select({ finding: here ? null : one.index }); }}>
        <span>
          {findingTitle(one)}
          <small>{whereWords(finding)}</small>
        </span>
      </button>
      {here ? (
        <div className="finding-more">
          <p>{figuresWords(finding, units)}</p>
          <button type="button" onClick={() => { go('check', { finding: one.index }); }}>{say('place-lay-out.to-check')}</button>
          {field === null ? null : <button type="button" onClick={() => { go('brief', { field }); }}>{say('place-lay-out.to-field', { field: fieldName(field) })}</button>}
        </div>
      ) : null}
    </li>
  );
}
