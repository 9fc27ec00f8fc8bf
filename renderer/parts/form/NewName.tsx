import { useId, useState, type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

/** Adds an entry to a table by its name. A name that is there already is not taken twice. */
export function NewName({ label, taken, suggestions, add }: {
  readonly label: string; readonly taken: readonly string[]; readonly suggestions: readonly string[]; readonly add: (name: string) => void;
}): ReactElement {
  const [name, setName] = useState('');
  const id = useId();
  const tidy = name.trim();
  const twice = taken.includes(tidy);
  const put = (): void => {
    if (tidy === '' || twice || tidy === '__proto__') return;
    add(tidy);
    setName('');
  };
  return (
    <form
      className="entry-add" onSubmit={(event) => {
        event.preventDefault();
        put();
      }}
    >
      <label htmlFor={id}>{label}</label>
      <input
        id={id} type="text" className="typed" autoComplete="off" list={`${id}-list`} value={name} aria-invalid={twice ? true : undefined}
        aria-describedby={twice ? `${id}-fault` : undefined} onChange={(event) => { setName(event.currentTarget.value); }}
      />
      <datalist id={`${id}-list`}>{suggestions.map((suggestion) => <option key={suggestion} value={suggestion} />)}</datalist>
      <button type="submit" disabled={tidy === '' || twice}>{say('place-brief.add-one')}</button>
      {twice ? <span id={`${id}-fault`} className="attention">{say('place-brief.twice', { name: tidy })}</span> : null}
    </form>
  );
}
