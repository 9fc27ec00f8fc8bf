import { type ReactElement } from 'react';
import { choiceOf, standingAt, type Field } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { isStringKey, say } from '../../../core/text/index.ts';
import { pathSteps } from '../../project/json-path.ts';
import { useField } from '../field/use-field.ts';
import { useProject } from '../field/use-project.ts';
import { GroupFaults } from './GroupFaults.tsx';
import { knownField } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';

function choices({ what }: Field): readonly Json[] {
  if (what.kind === 'choice') return what.choices;
  if (what.kind !== 'whole') return [];
  const { least, greatest } = what.range;
  return Array.from({ length: greatest - least + 1 }, (_, index) => least + index);
}

function words(entry: Field, choice: Json): string {
  const month = `choice.month.${String(choice)}`;
  return typeof choice === 'number' && isStringKey(month) ? say(month) : choiceOf(entry, String(choice));
}

/** Some of a few: months, open sides. What holds by default is ticked too, and said to be the default. */
export function CheckList({ path }: { readonly path: string }): ReactElement {
  const state = useField(path);
  const entry = knownField(`${path}[0]`);
  const standing = useProject((project) => standingAt(pathSteps(path), project)?.words ?? '');
  const all = choices(entry);
  const said = Array.isArray(state.value) ? (state.value as readonly Json[]) : null;
  const held = said ?? standing.split(', ').filter((word) => all.includes(word));
  const toggle = (choice: Json, on: boolean): void => {
    const kept = held.filter((other) => other !== choice);
    state.write(on ? [...kept, choice].toSorted((a, b) => all.indexOf(a) - all.indexOf(b)) : kept);
    state.settle();
  };
  return (
    <fieldset className="part checks" data-field={path} tabIndex={-1}>
      <legend>{state.label}</legend>
      <PartHelp path={path} />
      <div className={said === null ? 'check-line left' : 'check-line'}>
        {all.map((choice) => (
          <label key={String(choice)} className="none-box">
            <input
              type="checkbox" checked={held.includes(choice)} onFocus={state.look}
              onChange={(event) => { toggle(choice, event.currentTarget.checked); }}
            />
            {words(entry, choice)}
          </label>
        ))}
        {said === null && state.standing !== null ? <span className="standing">{say('place-brief.default', { value: held.map((choice) => words(entry, choice)).join(', ') || standing })}</span> : null}
        {said !== null && state.field.asked === 'never' ? (
          <button type="button" className="quiet" aria-label={say('place-brief.restore-of', { field: state.label })} onClick={state.restore}>{say('place-brief.restore')}</button>
        ) : null}
      </div>
      <GroupFaults path={path} rows={[]} />
    </fieldset>
  );
}
