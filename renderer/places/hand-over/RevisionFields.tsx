import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { present } from '../../project/history.ts';
import { valueAt } from '../../project/json-path.ts';
import { useStore } from '../../project/store.ts';

const FIELDS = ['letter', 'date', 'note'] as const;

/** What the package says of its revision: every drawing bears it. */
export function RevisionFields(): ReactElement | null {
  const { session, worked } = useDeskWindow();
  const open = useStore(session);
  const { answer } = useStore(worked);
  if (open === null) return null;
  return (
    <section aria-labelledby="hand-over-revision">
      <h2 id="hand-over-revision">{say('place-hand-over.revision')}</h2>
      <div className="hand-over-revision">
        {FIELDS.map((field) => {
          const path = `revision.${field}`;
          const value = valueAt(present(open.history), path);
          const label = say(`place-hand-over.${field}`);
          const fault = answer?.faults.find((one) => one.path === path)?.words;
          return (
            <label key={field}>
              <span>{label}</span>
              <input
                value={typeof value === 'string' ? value : ''}
                placeholder={field === 'letter' ? 'A' : undefined}
                aria-invalid={fault !== undefined}
                onChange={(event) => {
                  const typed = event.target.value;
                  session.setField(path, typed === '' ? undefined : typed, { label, gesture: path });
                }}
                onBlur={session.settle}
              />
              {fault === undefined ? null : <small className="attention">{fault}</small>}
            </label>
          );
        })}
      </div>
    </section>
  );
}
