import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { type FieldState } from './use-field.ts';

/** Says that a field is to be none, where the format has that: no sheet, no load. */
export function NoneBox({ state, name }: { readonly state: FieldState; readonly name: string }): ReactElement {
  return (
    <label className="none-box">
      <input
        type="checkbox"
        aria-label={`${name}: ${say('place-brief.none-of')}`}
        checked={state.value === null}
        onChange={(event) => { state.write(event.currentTarget.checked ? null : undefined); }}
        onBlur={state.settle}
      />
      {say('place-brief.none-of')}
    </label>
  );
}
