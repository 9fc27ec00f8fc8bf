import { type ReactElement } from 'react';
import { showValue } from '../../core/brief/json/show-value.ts';
import { type Json } from '../../core/brief/json/types.ts';
import { say } from '../../core/text/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { type Asking } from './asking.ts';
import { type Difference } from './differences.ts';

type Props = Extract<Asking, { readonly kind: 'changed' }>;

/** More than these no person compares in a dialog. */
const SHOWN = 12;

/** Somebody else has written the file: what differs, and whose is to stand. */
export function ChangedDialog({ name, differences, answer }: Props): ReactElement {
  return (
    <Dialog
      title={say('place-projects.changed.title')}
      onLeave={() => { answer('stay'); }}
      answers={
        <>
          <button type="button" onClick={() => { answer('stay'); }}>{say('place-projects.unsaved.stay')}</button>
          {differences === null ? null : <button type="button" onClick={() => { answer('theirs'); }}>{say('place-projects.changed.open-theirs')}</button>}
          <button type="button" onClick={() => { answer('over'); }}>{say('place-projects.changed.over')}</button>
          <button type="button" className="main" onClick={() => { answer('elsewhere'); }}>{say('place-projects.changed.elsewhere')}</button>
        </>
      }
    >
      <p>{say('place-projects.changed.words', { name })}</p>
      {differences === null
        ? <p className="attention">{say('place-projects.changed.no-project')}</p>
        : <DifferenceTable differences={differences} />}
    </Dialog>
  );
}

function DifferenceTable({ differences }: { readonly differences: readonly Difference[] }): ReactElement {
  if (differences.length === 0) return <p>{say('place-projects.changed.same')}</p>;
  const rest = differences.length - SHOWN;
  return (
    <>
      <p>{say('place-projects.changed.count', { count: differences.length })}</p>
      <table>
        <thead>
          <tr>
            <th scope="col">{say('place-projects.changed.field')}</th>
            <th scope="col">{say('place-projects.changed.theirs')}</th>
            <th scope="col">{say('place-projects.changed.ours')}</th>
          </tr>
        </thead>
        <tbody>
          {differences.slice(0, SHOWN).map(({ path, theirs, ours }) => (
            <tr key={path}><th scope="row">{path}</th><td>{shown(theirs)}</td><td>{shown(ours)}</td></tr>
          ))}
        </tbody>
      </table>
      {rest > 0 ? <p>{say('place-projects.changed.more', { count: rest })}</p> : null}
      <p className="faint">{say('place-projects.changed.keep')}</p>
    </>
  );
}

const shown = (value: Json | undefined): string => (value === undefined ? say('place-projects.changed.nothing') : showValue(value));
