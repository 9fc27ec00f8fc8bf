import { useId, useState, type ReactElement } from 'react';
import { labelOf } from '../../../core/brief/format/index.ts';
import { say } from '../../../core/text/index.ts';
import { FieldHelp } from '../field/FieldHelp.tsx';
import { knownField } from './part-words.ts';

/** Why a group or list matters, asked for by a button. */
export function PartHelp({ path }: { readonly path: string }): ReactElement {
  const [open, setOpen] = useState(false);
  const id = useId();
  const field = knownField(path);
  return (
    <div className="part-help">
      <button type="button" className="quiet" aria-expanded={open} aria-label={say('place-brief.why-of', { field: labelOf(field) })} onClick={() => { setOpen(!open); }}>
        {say('place-brief.why')}
      </button>
      {open ? <FieldHelp field={field} id={id} /> : null}
    </div>
  );
}
