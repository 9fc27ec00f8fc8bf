import { type ReactElement } from 'react';
import { labelOf, printValue } from '../../../core/brief/format/index.ts';
import { isJsonObject, type Json, type JsonObject } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useField } from '../field/use-field.ts';
import { useAllFaults } from '../field/use-faults.ts';
import { Bare } from './Bare.tsx';
import { anyUnder } from './own-faults.ts';
import { further, knownField } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';

/** A list of small groups, each a line of figures, such as the bars on the rack: how long, how many, what one is worth. */
export function GroupRows({ path }: { readonly path: string }): ReactElement {
  const state = useField(path);
  const all = useAllFaults();
  const { what } = knownField(further(path, 0));
  const fields = what.kind === 'group' ? Object.entries(what.fields) : [];
  const rows = (Array.isArray(state.value) ? (state.value as readonly Json[]) : []).map((row): JsonObject => (isJsonObject(row) ? row : {}));
  const at = (index: number): string => further(path, index);
  const write = (next: readonly Json[]): void => { state.write(next); };
  const begun = Object.fromEntries(fields.filter(([, field]) => field.asked !== 'never').map(([name]) => [name, '']));
  const faults = all.filter((fault) => anyUnder([fault], path)).map(({ words }) => words);
  const described = faults.length === 0 ? undefined : `${state.id}-fault`;
  return (
    <div className={faults.length === 0 ? 'field' : 'field at-fault'} data-field={path} tabIndex={-1} role="group" aria-label={state.label}>
      <span>{state.label}</span>
      <div className="group-rows">
        {rows.map((row, index) => {
          const entry = say('place-brief.entry', { field: state.label, number: index + 1 });
          return (
            <div key={index} className="field-line" data-field={at(index)}>
              {fields.map(([name, field]) => {
                const value = row[name];
                const words = value === undefined || field.what.kind !== 'length' ? null : printValue(field.what, value, state.units);
                const place = further(at(index), name);
                return (
                  <span key={name} className="pair-part" data-field={place}>
                    <Bare
                      what={field.what} id={`${state.id}-${String(index)}-${name}`} label={say('place-brief.part-of', { field: labelOf(field), of: entry })} shown={labelOf(field)}
                      value={value} invalid={anyUnder(all, place)} describedBy={described} onFocus={state.look} onLeave={state.settle}
                      write={(next) => {
                        // What is asked for stays in the file, empty; the rest goes out of it.
                        const rest = Object.fromEntries(Object.entries(row).filter(([other]) => other !== name));
                        write(rows.with(index, next === undefined && field.asked === 'never' ? rest : { ...row, [name]: next ?? '' }));
                      }}
                    />
                    {words === null ? null : <span className="reading">{words}</span>}
                  </span>
                );
              })}
              <button type="button" className="quiet" aria-label={say('place-brief.remove-of', { field: entry })} onClick={() => { write(rows.toSpliced(index, 1)); state.settle(); }}>
                {say('place-brief.remove')}
              </button>
            </div>
          );
        })}
        <button type="button" aria-label={say('place-brief.add', { field: state.label })} onClick={() => { write([...rows, begun]); state.settle(); }}>{say('place-brief.add-one')}</button>
      </div>
      <div className="field-ways"><PartHelp path={path} /></div>
      {faults.length === 0 ? null : <p id={`${state.id}-fault`} className="field-fault">{[...new Set(faults)].join('; ')}</p>}
    </div>
  );
}
