import { type ReactElement } from 'react';
import { standingAt, type What } from '../../../core/brief/format/index.ts';
import { isJsonObject, type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { pathSteps, valueAt } from '../../project/json-path.ts';
import { projectOf, useProject } from '../field/use-project.ts';
import { useSuggestions } from '../field/use-suggestions.ts';
import { GroupFaults } from './GroupFaults.tsx';
import { NewName } from './NewName.tsx';
import { further, knownField, labelAt } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';
import { RecordRow } from './RecordRow.tsx';
import { renamed } from './renamed.ts';

/** What an entry holds before anything is typed in it. */
function begun(path: string): Json {
  const { what } = knownField(path);
  if (what.kind !== 'named') return '';
  switch (what.entry.what.kind) {
    case 'list': return [begunEntry(what.entry.what.entry.what)];
    case 'group': return begunEntry(what.entry.what);
    case 'custom-section': return { outside: '', wall: '' };
    default: return '';
  }
}

/** Figures that are asked for, empty until they are typed. */
const begunEntry = (what: What): Json => (what.kind === 'group' ? Object.fromEntries(Object.entries(what.fields).filter(([, { asked }]) => asked !== 'never').map(([name]) => [name, ''])) : '');

/** A table by name: stock, rolls, prices, sections. Marks are shown, and no one writes them. */
export function Records({ path }: { readonly path: string }): ReactElement {
  const { session } = useDeskWindow();
  const field = knownField(path);
  const label = labelAt(path);
  const fixed = path === 'marks';
  const names = JSON.parse(useProject((project) => {
    const table = valueAt(project, path);
    return isJsonObject(table) ? JSON.stringify(Object.keys(table)) : '[]';
  })) as readonly string[];
  const standing = useProject((project) => (valueAt(project, path) === undefined ? (standingAt(pathSteps(path), project)?.words ?? '') : ''));
  const bySection = ['shop.stock', 'shop.roll', 'shop.rack'].includes(path);
  const suggestions = useSuggestions(bySection ? knownField('crowdPen.pivotPost') : field);
  const write = (value: Json | undefined, words: string): void => { session.setField(path, value, { label: words }); };
  const table = () => {
    const now = valueAt(projectOf(session), path);
    return isJsonObject(now) ? now : {};
  };
  return (
    <fieldset className="part" data-field={path} tabIndex={-1}>
      <legend>{label}</legend>
      <PartHelp path={path} />
      {standing === '' ? null : <p className="part-ways standing">{say('place-brief.default', { value: standing })}</p>}
      <GroupFaults path={path} />
      <div className="entries">
        {names.map((name) => (
          <RecordRow
            key={name} path={further(path, name)} name={name} others={names.filter((other) => other !== name)} fixed={fixed}
            rename={(next) => { write(renamed(table(), name, next), say('place-brief.renamed', { field: name })); }}
            remove={() => { session.setField(further(path, name), undefined, { label: say('place-brief.removed', { field: name }) }); }}
          />
        ))}
        {fixed ? null : (
          <NewName
            label={say('place-brief.new-in', { field: label })} taken={names} suggestions={suggestions.filter((name) => !names.includes(name))}
            add={(name) => { write({ ...table(), [name]: begun(path) }, say('place-brief.added', { field: name })); }}
          />
        )}
        {fixed && names.length === 0 ? <p className="standing">{say('place-brief.no-marks')}</p> : null}
      </div>
    </fieldset>
  );
}
