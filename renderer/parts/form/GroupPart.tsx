import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { projectOf, useProject } from '../field/use-project.ts';
import { valueAt } from '../../project/json-path.ts';
import { FormPart } from './FormPart.tsx';
import { GroupFaults } from './GroupFaults.tsx';
import { further, knownField, labelAt } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';
import { groupBegun } from './starters.ts';

/** Groups that mean something by being there: a pad, its roof, a way back, working hours. */
const THERE_OR_NOT: readonly string[] = ['squeezePad', 'squeezePad.roof', 'returnAlley', 'site.work'];

/** The fields of a group, each a part of the form. */
export function GroupFields({ path }: { readonly path: string }): ReactElement {
  const { what } = knownField(path);
  const names = what.kind === 'group' ? Object.keys(what.fields) : [];
  return (
    <>
      <GroupFaults path={path} rows={names} />
      {names.map((name) => <FormPart key={name} path={further(path, name)} />)}
    </>
  );
}

/** A group with its heading; one that the project may be without can be added and taken out. */
export function GroupPart({ path }: { readonly path: string }): ReactElement {
  const { session } = useDeskWindow();
  const optional = THERE_OR_NOT.includes(path);
  const there = useProject((project) => valueAt(project, path) !== undefined);
  const label = labelAt(path);
  const put = (there: boolean): void => {
    const words = say(there ? 'place-brief.added' : 'place-brief.taken-out', { field: label });
    session.setField(path, there ? groupBegun(path, projectOf(session)) : undefined, { label: words });
  };
  return (
    <fieldset className="part" data-field={path} tabIndex={-1}>
      <legend>{label}</legend>
      <PartHelp path={path} />
      {optional ? (
        <p className="part-ways">
          {there ? null : <span className="standing">{say('place-brief.not-there')} </span>}
          <button type="button" onClick={() => { put(!there); }}>{say(there ? 'place-brief.take-out' : 'place-brief.add', { field: label })}</button>
        </p>
      ) : null}
      {optional && !there ? <GroupFaults path={path} /> : <GroupFields path={path} />}
    </fieldset>
  );
}
