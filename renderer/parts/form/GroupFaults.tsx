import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { pathSteps, type Step } from '../../project/json-path.ts';
import { useAllFaults } from '../field/use-faults.ts';
import { ownFaults } from './own-faults.ts';

/** What is wrong with a group or list itself, and with what stands in it and has no row: that can be taken out. */
export function GroupFaults({ path, rows = null }: { readonly path: string; readonly rows?: readonly Step[] | null }): ReactElement | null {
  const { session } = useDeskWindow();
  const own = ownFaults(useAllFaults(), path, rows);
  if (own.length === 0) return null;
  return (
    <ul className="group-faults">
      {own.map((fault) => (
        <li key={`${fault.path} ${fault.words}`} data-field={fault.path} tabIndex={-1}>
          <span className="attention">{fault.stray ? `${fault.path}: ${fault.words}` : fault.words}</span>
          {fault.stray && pathSteps(fault.path).length > 0 ? (
            <button
              type="button"
              onClick={() => { session.setField(fault.path, undefined, { label: say('place-brief.taken-out', { field: fault.path }) }); }}
            >
              {say('place-brief.take-out', { field: fault.path })}
            </button>
          ) : null}
        </li>
      ))}
    </ul>
  );
}
