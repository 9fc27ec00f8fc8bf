import { type ReactElement } from 'react';
import { printValue } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { Bare } from './Bare.tsx';
import { restoreWords, standingWords } from '../field/standing-words.ts';
import { useField } from '../field/use-field.ts';
import { useFault } from '../field/use-faults.ts';
import { further, knownField } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';

const AXES = ['place-brief.x', 'place-brief.y'] as const;

/** A point of the plan, x and y. What is typed of one makes the other what held before, or a figure that is still asked for. */
export function PairRow({ path }: { readonly path: string }): ReactElement {
  const state = useField(path);
  const faults = [useFault(path), useFault(further(path, 0)), useFault(further(path, 1))].filter((fault) => fault !== '');
  const entry = knownField(further(path, 0));
  const held = (Array.isArray(state.value) ? state.value : Array.isArray(state.standing?.value) ? state.standing.value : ['', '']) as readonly Json[];
  const said = Array.isArray(state.value);
  const standing = state.value === undefined ? standingWords(state) : null;
  return (
    <fieldset className={faults.length === 0 ? 'field pair' : 'field pair at-fault'} data-field={path} tabIndex={-1}>
      <legend>{state.label}</legend>
      <div className="field-line">
        {AXES.map((axis, index) => {
          const value = said ? held[index] : undefined;
          const words = value === undefined ? null : printValue(entry.what, value, state.units);
          return (
            <span key={axis} className="pair-part" data-field={further(path, index)}>
              <Bare
                what={entry.what} id={`${state.id}-${String(index)}`} label={`${state.label} ${say(axis)}`} shown={say(axis)} value={value} invalid={faults.length > 0}
                describedBy={faults.length === 0 ? undefined : `${state.id}-fault`} onFocus={state.look} onLeave={state.settle}
                write={(next) => { state.write([0, 1].map((at) => (at === index ? (next ?? '') : (held[at] ?? '')))); }}
              />
              {words === null ? null : <span className="reading">{say('place-brief.reads', { value: words })}</span>}
            </span>
          );
        })}
        {standing === null ? null : <span className="standing">{standing}</span>}
      </div>
      <div className="field-ways">
        {state.value === undefined ? null : (
          <button type="button" className="quiet" aria-label={say(`${restoreWords(state.standing)}-of`, { field: state.label })} onClick={state.restore}>{say(restoreWords(state.standing))}</button>
        )}
        <PartHelp path={path} />
      </div>
      {faults.length === 0 ? null : <p id={`${state.id}-fault`} className="field-fault">{faults.join('; ')}</p>}
    </fieldset>
  );
}
