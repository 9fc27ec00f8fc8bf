import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { FieldRow } from '../../parts/field/FieldRow.tsx';

const FIELDS = ['letter', 'date', 'note'] as const;

/** What the package says of its revision: every drawing bears it. */
export function RevisionFields(): ReactElement {
  return (
    <section aria-labelledby="hand-over-revision">
      <h2 id="hand-over-revision">{say('place-hand-over.revision')}</h2>
      <div className="hand-over-revision">
        {FIELDS.map((field) => <FieldRow key={field} path={`revision.${field}`} label={say(`place-hand-over.${field}`)} />)}
      </div>
    </section>
  );
}
