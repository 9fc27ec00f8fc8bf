import { type ReactElement } from 'react';
import { choiceOf, type Field, type Group } from '../../../core/brief/format/index.ts';
import { isJsonObject, type Json, type JsonObject } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { valueAt } from '../../project/json-path.ts';
import { useProject } from '../field/use-project.ts';
import { EntryKind } from './EntryKind.tsx';
import { EntryWays } from './EntryWays.tsx';
import { FormPart } from './FormPart.tsx';
import { GroupFaults } from './GroupFaults.tsx';
import { further, knownField, labelAt } from './part-words.ts';
import { runOfEntry } from './run-names.ts';
import { shownNames } from './shown-names.ts';
import { type ListState } from './use-list.ts';

function groupOf({ what }: Field, kind: Json | undefined): Group | null {
  if (what.kind === 'group') return what;
  return what.kind === 'forms' && typeof kind === 'string' && Object.hasOwn(what.forms, kind) ? (what.forms[kind] ?? null) : null;
}

/** One entry of a list of groups, such as a run: its fields, and the ways to move and remove it. */
export function Entry({ list, index, ways }: { readonly list: string; readonly index: number; readonly ways: ListState }): ReactElement {
  const { selection } = useDeskWindow();
  const path = further(list, index);
  const field = knownField(path);
  const word = (name: string) => (project: JsonObject): Json | undefined => {
    const entry = valueAt(project, path);
    return isJsonObject(entry) ? entry[name] : undefined;
  };
  const kind = useProject(word('kind'));
  const surface = useProject(word('surface'));
  const said = useProject((project) => {
    const entry = valueAt(project, path);
    return isJsonObject(entry) ? Object.keys(entry).join(' ') : '';
  }).split(' ');
  const run = useProject((project) => runOfEntry(project, list, index));
  const chosen = useStore(selection).run;
  const group = groupOf(field, kind);
  const names = group === null ? [] : shownNames(list, Object.keys(group.fields), list === 'ramps' ? surface : kind, said);
  const kindField = 'kind' in (group?.fields ?? {}) || field.what.kind === 'forms' ? knownField(further(path, 'kind')) : null;
  const title = run ?? say('place-brief.entry', { field: labelAt(path), number: index + 1 });
  const heading = kindField !== null && typeof kind === 'string' ? say('place-brief.entry-kind', { title, kind: choiceOf(kindField, kind) }) : title;
  return (
    <fieldset className={run !== null && run === chosen ? 'entry chosen' : 'entry'} data-field={path} tabIndex={-1}>
      <legend>{heading}</legend>
      <EntryWays title={title} index={index} ways={ways} />
      <GroupFaults path={path} rows={[...names, ...(kindField === null ? [] : ['kind'])]} />
      {kindField === null ? null : <EntryKind list={list} path={further(path, 'kind')} />}
      {names.filter((name) => name !== 'kind').map((name) => <FormPart key={name} path={further(path, name)} />)}
    </fieldset>
  );
}
