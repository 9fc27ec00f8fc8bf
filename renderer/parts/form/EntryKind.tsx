import { type ReactElement } from 'react';
import { choiceOf } from '../../../core/brief/format/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { valueAt } from '../../project/json-path.ts';
import { useField } from '../field/use-field.ts';
import { projectOf } from '../field/use-project.ts';
import { PartHelp } from './PartHelp.tsx';
import { asKind } from './starters.ts';

/** What kind an entry is. Another kind begins with figures of its own, and keeps what both have. */
export function EntryKind({ list, path }: { readonly list: string; readonly path: string }): ReactElement {
  const { session } = useDeskWindow();
  const { id, field, label, value, fault, look } = useField(path);
  const choices = field.what.kind === 'choice' ? field.what.choices : [];
  const known = typeof value === 'string' && choices.includes(value);
  const entry = path.slice(0, path.length - '.kind'.length);
  const change = (kind: string): void => {
    const project = projectOf(session);
    session.setField(entry, asKind(list, kind, valueAt(project, entry), project), { label: say('place-brief.changed', { field: label }) });
  };
  return (
    <div className={fault === '' ? 'field' : 'field at-fault'} data-field={path}>
      <label htmlFor={id}>{label}</label>
      <div className="field-line">
        <select
          id={id} className="typed" value={known ? value : ''} aria-invalid={fault === '' ? undefined : true}
          aria-describedby={fault === '' ? undefined : `${id}-fault`} aria-required onFocus={look}
          onChange={(event) => { change(event.currentTarget.value); }}
        >
          {known ? null : <option value="" disabled>{value === undefined ? say('place-brief.unset') : say('place-brief.not-allowed', { value: JSON.stringify(value) })}</option>}
          {choices.map((choice) => <option key={choice} value={choice}>{choiceOf(field, choice)}</option>)}
        </select>
      </div>
      <div className="field-ways"><PartHelp path={path} /></div>
      {fault === '' ? null : <p id={`${id}-fault`} className="field-fault">{fault}</p>}
    </div>
  );
}
