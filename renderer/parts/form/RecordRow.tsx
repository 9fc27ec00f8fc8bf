import { useState, type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { fieldId } from '../field/field-id.ts';
import { FieldRow } from '../field/FieldRow.tsx';
import { useField } from '../field/use-field.ts';
import { FigureList } from './FigureList.tsx';
import { GroupFaults } from './GroupFaults.tsx';
import { GroupFields } from './GroupPart.tsx';
import { GroupRows } from './GroupRows.tsx';
import { knownField } from './part-words.ts';

/** One entry of a table: its name, which can be changed, and what it holds. */
export function RecordRow({ path, name, others, fixed, rename, remove }: {
  readonly path: string; readonly name: string; readonly others: readonly string[]; readonly fixed: boolean;
  readonly rename: (next: string) => void; readonly remove: () => void;
}): ReactElement {
  const [typed, setTyped] = useState<string | null>(null);
  const { value } = useField(path);
  const { what } = knownField(path);
  if (fixed) {
    return (
      <div className="entry mark-row" data-field={path} tabIndex={-1}>
        <strong>{typeof value === 'string' ? value : ''}</strong> <span className="faint">{name}</span>
        <GroupFaults path={path} />
      </div>
    );
  }
  const tidy = (typed ?? name).trim();
  const twice = others.includes(tidy);
  const leave = (): void => {
    if (tidy !== '' && tidy !== name && tidy !== '__proto__' && !twice) rename(tidy);
    if (!twice) setTyped(null);
  };
  const id = `${fieldId(path)}-name`;
  return (
    // The row of the value bears the path where there is one, so that who is led there comes to the value and not to the name.
    <fieldset className="entry" data-field={what.kind === 'group' ? path : undefined} tabIndex={-1}>
      <legend>{name}</legend>
      <div className="entry-ways">
        <button type="button" aria-label={say('place-brief.remove-of', { field: name })} onClick={remove}>{say('place-brief.remove')}</button>
      </div>
      <div className={twice ? 'field at-fault' : 'field'}>
        <label htmlFor={id}>{say('place-brief.name')}</label>
        <div className="field-line">
          <input
            id={id} type="text" className="typed" autoComplete="off" value={typed ?? name} aria-invalid={twice ? true : undefined}
            aria-describedby={twice ? `${id}-fault` : undefined} onChange={(event) => { setTyped(event.currentTarget.value); }} onBlur={leave}
            onKeyDown={(event) => { if (event.key === 'Enter') leave(); }}
          />
        </div>
        {twice ? <p id={`${id}-fault`} className="field-fault">{say('place-brief.twice', { name: tidy })}</p> : null}
      </div>
      <Held path={path} />
    </fieldset>
  );
}

/** What an entry holds: a group, a list of figures or of groups, or one field. */
function Held({ path }: { readonly path: string }): ReactElement {
  const { what } = knownField(path);
  if (what.kind === 'group') return <GroupFields path={path} />;
  if (what.kind !== 'list') return <FieldRow path={path} />;
  return what.entry.what.kind === 'group' ? <GroupRows path={path} /> : <FigureList path={path} />;
}
