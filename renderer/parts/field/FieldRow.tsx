import { useState, type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { FieldControl } from './FieldControl.tsx';
import { FieldHelp } from './FieldHelp.tsx';
import './field.css';
import { NoneBox } from './NoneBox.tsx';
import { reading } from './reading.ts';
import { restoreWords, standingWords } from './standing-words.ts';
import { useField } from './use-field.ts';

/**
 * One field of the project by its path (`chute.runs[1].angle`): label, control, its figure in the project's units, its default and the
 * way back to it, help, and what is wrong with it. Throws for a path that is no single field of the format.
 */
export function FieldRow({ path, label }: { readonly path: string; readonly label?: string }): ReactElement {
  const state = useField(path);
  const [open, setOpen] = useState(false);
  const { id, field, value, fault } = state;
  const name = label ?? state.label;
  const read = reading(state);
  const described = [
    ...(fault === '' ? [] : [`${id}-fault`]), ...(read === null ? [] : [`${id}-read`]), ...(open ? [`${id}-help`] : []),
  ];
  return (
    <div className={fault === '' ? 'field' : 'field at-fault'} data-field={path}>
      <label htmlFor={id}>
        {name}
        {field.asked !== 'never' && value === undefined ? <small> {say('place-brief.asked')}</small> : null}
      </label>
      <div className="field-line">
        <FieldControl state={state} describedBy={described.length === 0 ? undefined : described.join(' ')} />
        {field.nullable ? <NoneBox state={state} name={name} /> : null}
        {read === null ? null : <span id={`${id}-read`} className={value === undefined ? 'standing' : 'reading'}>{read}</span>}
      </div>
      <div className="field-ways">
        {value === undefined || field.asked !== 'never' || state.standing === null ? null : (
          <button type="button" className="quiet" aria-label={say(`${restoreWords(state.standing)}-of`, { field: name })} title={standingWords(state) ?? undefined} onClick={state.restore}>
            {say(restoreWords(state.standing))}
          </button>
        )}
        <button type="button" className="quiet" aria-label={say('place-brief.why-of', { field: name })} aria-expanded={open} onClick={() => { setOpen(!open); }}>
          {say('place-brief.why')}
        </button>
      </div>
      {fault === '' ? null : <p id={`${id}-fault`} className="field-fault">{fault}</p>}
      {open ? <FieldHelp field={field} id={`${id}-help`} /> : null}
    </div>
  );
}
