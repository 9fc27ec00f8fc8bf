import { type ReactElement } from 'react';
import { choiceOf } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { standingWords } from './standing-words.ts';
import { type FieldState } from './use-field.ts';

interface Choice {
  readonly value: Json;
  readonly words: string;
}

function choicesOf({ field }: FieldState): readonly Choice[] {
  if (field.what.kind === 'flag') return [{ value: true, words: say('term.yes') }, { value: false, words: say('term.no') }];
  const choices = field.what.kind === 'choice' ? field.what.choices : [];
  return choices.map((choice) => ({ value: choice, words: choiceOf(field, choice) }));
}

/** One of a few, the default among them as what it is. A value of the file that is none of them is shown, and not allowed. */
export function ChoiceField({ state, describedBy }: { readonly state: FieldState; readonly describedBy: string | undefined }): ReactElement {
  const { id, value, field } = state;
  const choices = choicesOf(state);
  const at = choices.findIndex((choice) => choice.value === value);
  const stray = at < 0 && value !== undefined;
  return (
    <select
      id={id}
      className={value === undefined ? 'typed left' : 'typed'}
      value={stray ? 'stray' : at < 0 ? '' : String(at)}
      aria-invalid={state.fault === '' ? undefined : true}
      aria-describedby={describedBy}
      aria-required={field.asked === 'never' ? undefined : true}
      onFocus={state.look}
      onBlur={state.settle}
      onChange={(event) => { state.write(choices[Number(event.currentTarget.value === '' ? NaN : event.currentTarget.value)]?.value); }}
    >
      <option value="">{standingWords(state) ?? say('place-brief.unset')}</option>
      {stray ? <option value="stray" disabled>{say('place-brief.not-allowed', { value: JSON.stringify(value) })}</option> : null}
      {choices.map((choice, index) => <option key={choice.words} value={index}>{choice.words}</option>)}
    </select>
  );
}
