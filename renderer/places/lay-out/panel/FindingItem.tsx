import { type ReactElement } from 'react';
import { printFigures } from '../../../../core/checks/index.ts';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { useStore } from '../../../project/store.ts';
import { type Units } from '../../../worker/protocol.ts';
import { findingTitle, type ShownFinding } from '../shown-findings.ts';

/** One finding in the list: chosen, it is shown on the board, with its figures and the way to Check. */
export function FindingItem({ one, units }: { readonly one: ShownFinding; readonly units: Units }): ReactElement {
  const { selection, select, go } = useDeskWindow();
  const { finding: chosen } = useStore(selection);
  const here = chosen === one.index;
  const { finding } = one;
  const { measured, limit } = printFigures(finding, units);
  return (
    <li className="finding-item">
      <button type="button" className={finding.result === 'fix' ? 'plain attention' : 'plain'} aria-pressed={here} onClick={() => { select({ finding: here ? null : one.index }); }}>
        <span>
          {findingTitle(one)}
          <small>{finding.where}</small>
        </span>
      </button>
      {here ? (
        <div className="finding-more">
          <p>{measured === null ? say('place-lay-out.limit', { limit }) : say('place-lay-out.measured', { measured, limit })}</p>
          <button type="button" onClick={() => { go('check', { finding: one.index }); }}>{say('place-lay-out.to-check')}</button>
        </div>
      ) : null}
    </li>
  );
}
