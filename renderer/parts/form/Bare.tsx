import { useState, type ReactElement } from 'react';
import { unitsOf, type What } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { type Units } from '../../worker/protocol.ts';
import { isFigure, textOf, valueOf } from '../field/typed.ts';
import { useProject } from '../field/use-project.ts';

export interface BareProps {
  readonly what: What;
  readonly id: string;
  /** Its name for who can't see where it stands. */
  readonly label: string;
  /** What stands before it; left out, nothing does. */
  readonly shown?: string;
  readonly value: Json | undefined;
  readonly invalid: boolean;
  readonly describedBy: string | undefined;
  readonly write: (value: Json | undefined) => void;
  readonly onFocus?: () => void;
  readonly onLeave: () => void;
}

/** One figure of several that make a field: x of a point, a side of a sheet. What is typed stays as it is typed. */
export function Bare({ what, id, label, shown, value, invalid, describedBy, write, onFocus, onLeave }: BareProps): ReactElement {
  const [draft, setDraft] = useState<{ readonly text: string; readonly value: Json | undefined } | null>(null);
  const units = useProject((project) => unitsOf(project)) as Units;
  const text = draft !== null && draft.value === value ? draft.text : textOf(value);
  const type = (typed: string): void => {
    const next = typed === '' ? undefined : valueOf(what, typed, units);
    // Emptied, the field holds an empty text until something is typed.
    setDraft({ text: typed, value: next ?? '' });
    write(next);
  };
  return (
    <>
      {shown === undefined ? null : <label htmlFor={id}>{shown}</label>}
      <input
        id={id} type="text" className={isFigure(what) ? 'typed figure' : 'typed'} autoComplete="off" spellCheck={false} aria-label={label}
        value={text} aria-invalid={invalid ? true : undefined} aria-describedby={describedBy} onFocus={onFocus}
        onChange={(event) => { type(event.currentTarget.value); }}
        onBlur={() => {
          setDraft(null);
          onLeave();
        }}
      />
    </>
  );
}
