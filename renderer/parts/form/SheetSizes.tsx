import { type ReactElement } from 'react';
import { printValue } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useField } from '../field/use-field.ts';
import { useAllFaults } from '../field/use-faults.ts';
import { Bare } from './Bare.tsx';
import { GroupFaults } from './GroupFaults.tsx';
import { ListStanding } from './ListStanding.tsx';
import { ownFaults } from './own-faults.ts';
import { further, knownField } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';
import { useList } from './use-list.ts';

/** Sizes of stock sheet: rows of two sides. */
export function SheetSizes({ path }: { readonly path: string }): ReactElement {
  const state = useField(path);
  const ways = useList(path);
  const all = useAllFaults();
  const side = knownField(further(further(path, 0), 0));
  const rows = Array.isArray(state.value) ? (state.value as readonly Json[]) : [];
  const sides = (row: Json | undefined): readonly Json[] => (Array.isArray(row) ? (row as readonly Json[]) : ['', '']);
  return (
    <fieldset className="part" data-field={path} tabIndex={-1}>
      <legend>{state.label}</legend>
      <PartHelp path={path} />
      <ListStanding path={path} ways={ways} />
      <GroupFaults path={path} />
      <div className="entries">
        {rows.map((row, index) => {
          const at = further(path, index);
          const faults = [at, further(at, 0), further(at, 1)].flatMap((place) => ownFaults(all, place, null));
          const name = say('place-brief.entry', { field: say('place-brief.sheet'), number: index + 1 });
          const faultId = `${state.id}-${String(index)}-fault`;
          return (
            <div key={index} className={faults.length === 0 ? 'field' : 'field at-fault'} data-field={at} tabIndex={-1} role="group" aria-label={name}>
              <span>{name}</span>
              <div className="field-line">
                {[0, 1].map((which) => (
                  <span key={which} className="pair-part" data-field={further(at, which)}>
                    {which === 0 ? null : <span aria-hidden>×</span>}
                    <Bare
                      what={side.what} id={`${state.id}-${String(index)}-${String(which)}`} label={say('place-brief.side-of', { field: name, number: which + 1 })}
                      value={sides(row)[which]} invalid={faults.length > 0} describedBy={faults.length === 0 ? undefined : faultId} onFocus={state.look} onLeave={state.settle}
                      write={(next) => { state.write(rows.with(index, [0, 1].map((other) => (other === which ? (next ?? '') : (sides(row)[other] ?? ''))))); }}
                    />
                  </span>
                ))}
                <span className="reading">
                  {say('place-brief.reads', { value: sides(row).map((value) => printValue(side.what, value, state.units) ?? '?').join(' × ') })}
                </span>
              </div>
              <div className="field-ways">
                <button type="button" aria-label={say('place-brief.remove-of', { field: name })} onClick={() => { ways.remove(index); }}>{say('place-brief.remove')}</button>
              </div>
              {faults.length === 0 ? null : <p id={faultId} className="field-fault">{faults.map(({ words }) => words).join('; ')}</p>}
            </div>
          );
        })}
        <div className="entry-add"><button type="button" onClick={() => { ways.add(['', '']); }}>{say('place-brief.add', { field: say('place-brief.sheet') })}</button></div>
      </div>
    </fieldset>
  );
}
