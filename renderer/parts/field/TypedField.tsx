import { useState, type ReactElement } from 'react';
import { type What } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { pathSteps } from '../../project/json-path.ts';
import { isFigure, textOf, valueOf } from './typed.ts';
import { isEntry, type FieldState } from './use-field.ts';

/** What is being typed, and the value that it made. */
interface Draft {
  readonly text: string;
  readonly value: Json | undefined;
}

const LONG: readonly string[] = ['text', 'section'];
/** A text of more letters than this is a note. */
const NOTE = 100;

/** How wide the field is: a note's words must not run out of sight. */
function widthOf(what: What): string {
  if (isFigure(what)) return 'typed figure';
  if (what.kind === 'text' && what.range.greatest > NOTE) return 'typed long note';
  return LONG.includes(what.kind) ? 'typed long' : 'typed';
}

/** A figure or a text, typed. What was typed stays in sight as it was typed, readable or not. */
export function TypedField({ state, describedBy, suggestions = [] }: {
  readonly state: FieldState; readonly describedBy: string | undefined; readonly suggestions?: readonly string[];
}): ReactElement {
  const { path, field, id, value } = state;
  const [draft, setDraft] = useState<Draft | null>(null);
  // `12.` makes 12 in the file; while it is typed the field keeps the point. A value that came from elsewhere takes its place.
  const text = draft !== null && draft.value === value ? draft.text : textOf(value);
  const type = (typed: string): void => {
    const empty = isEntry(pathSteps(path), field) ? '' : undefined;
    const next = typed === '' ? empty : valueOf(field.what, typed, state.units);
    setDraft({ text: typed, value: next });
    state.write(next);
  };
  const list = suggestions.length === 0 ? undefined : `${id}-list`;
  return (
    <>
      <input
        id={id}
        type="text"
        className={widthOf(field.what)}
        autoComplete="off"
        spellCheck={false}
        list={list}
        value={text}
        aria-invalid={state.fault === '' ? undefined : true}
        aria-describedby={describedBy}
        aria-required={field.asked === 'never' ? undefined : true}
        onFocus={state.look}
        onChange={(event) => { type(event.currentTarget.value); }}
        onBlur={() => {
          setDraft(null);
          state.settle();
        }}
      />
      {list === undefined ? null : <datalist id={list}>{suggestions.map((name) => <option key={name} value={name} />)}</datalist>}
    </>
  );
}
