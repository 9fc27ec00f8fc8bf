import { type ReactElement } from 'react';
import { type JsonObject } from '../../../../core/brief/json/types.ts';
import { type StationRun } from '../../../../core/schedules/index.ts';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { withValue } from '../../../project/json-path.ts';
import { type Units } from '../../../worker/protocol.ts';
import { type Standing, standsOn } from '../edits/stands-on.ts';
import { addSubject, type Subject, subjectsFor } from '../edits/subjects.ts';
import { FieldList } from './FieldList.tsx';

const FIELDS: Readonly<Record<Subject, readonly string[]>> = {
  'man-gate': ['at', 'width', 'side'],
  'pen-gate': ['at', 'width', 'side', 'swings', 'hangs', 'hingePost'],
  'alley-gate': ['at', 'side', 'swings', 'hingePost'],
  backstop: ['at', 'held'],
  catwalk: ['from', 'to', 'width', 'deckHeight', 'side'],
};

const OPENINGS = ['pen-gate', 'alley-gate', 'backstop', 'man-gate'] as const;

const kindOf = ({ list, item }: Standing): Subject => (list === 'catwalks' ? 'catwalk' : OPENINGS.find((kind) => kind === item['kind']) ?? 'man-gate');

/** Openings and catwalks of a run, with their figures. */
export function StandingList({ project, run, units }: { readonly project: JsonObject; readonly run: StationRun; readonly units: Units }): ReactElement | null {
  const { session } = useDeskWindow();
  const all = standsOn(project, run);
  const may = subjectsFor(run);
  if (all.length === 0 && may.length === 0) return null;
  return (
    <section aria-label={say('place-lay-out.stands')}>
      <h3>{say('place-lay-out.stands')}</h3>
      <ul>
        {all.map((one) => {
          const path = `${one.list}[${String(one.index)}]`;
          const kind = kindOf(one);
          return (
            <li key={path} className="stands">
              <div className="stands-head">
                <h4>{say(`place-lay-out.stands.${kind}`)}</h4>
                <button type="button" onClick={() => { session.change(withValue(project, path, undefined), { label: say(`place-lay-out.stands.remove.${kind}`) }); }}>
                  {say(`place-lay-out.stands.remove.${kind}`)}
                </button>
              </div>
              <FieldList paths={FIELDS[kind].map((field) => `${path}.${field}`)} />
            </li>
          );
        })}
      </ul>
      <div className="ways">
        {may.map((subject) => (
          <button key={subject} type="button" onClick={() => { session.change(addSubject(project, subject, run, units), { label: say(`place-lay-out.stands.add.${subject}`) }); }}>
            {say(`place-lay-out.stands.add.${subject}`)}
          </button>
        ))}
      </div>
    </section>
  );
}
