import { type ReactElement } from 'react';
import { printValue } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useField } from '../field/use-field.ts';
import { useAllFaults } from '../field/use-faults.ts';
import { Bare } from './Bare.tsx';
import { anyUnder, ownFaults } from './own-faults.ts';
import { further, knownField } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';

/** A list of figures of one kind, such as the lengths that a section is bought in. */
export function FigureList({ path }: { readonly path: string }): ReactElement {
  const state = useField(path);
  const all = useAllFaults();
  const entry = knownField(further(path, 0));
  const list = Array.isArray(state.value) ? (state.value as readonly Json[]) : [];
  const faults = [...ownFaults(all, path, null), ...list.flatMap((_, index) => ownFaults(all, further(path, index), null))];
  const write = (next: readonly Json[]): void => { state.write(next); };
  return (
    <div className={faults.length === 0 ? 'field' : 'field at-fault'} data-field={path} tabIndex={-1} role="group" aria-label={state.label}>
      <span>{state.label}</span>
      <div className="field-line">
        {list.map((value, index) => {
          const label = say('place-brief.entry', { field: state.label, number: index + 1 });
          return (
            <span key={index} className="pair-part" data-field={further(path, index)}>
              <Bare
                what={entry.what} id={`${state.id}-${String(index)}`} label={label} value={value} invalid={anyUnder(all, further(path, index))}
                describedBy={faults.length === 0 ? undefined : `${state.id}-fault`} onFocus={state.look} onLeave={state.settle}
                write={(next) => { write(list.with(index, next ?? '')); }}
              />
              <span className="reading">{printValue(entry.what, value, state.units) ?? ''}</span>
              <button type="button" className="quiet" aria-label={say('place-brief.remove-of', { field: label })} onClick={() => { write(list.toSpliced(index, 1)); state.settle(); }}>
                {say('place-brief.remove')}
              </button>
            </span>
          );
        })}
        <button type="button" aria-label={say('place-brief.add', { field: state.label })} onClick={() => { write([...list, '']); state.settle(); }}>{say('place-brief.add-one')}</button>
      </div>
      <div className="field-ways"><PartHelp path={path} /></div>
      {faults.length === 0 ? null : <p id={`${state.id}-fault`} className="field-fault">{[...new Set(faults.map(({ words }) => words))].join('; ')}</p>}
    </div>
  );
}
