import { type ReactElement } from 'react';
import { isJsonObject, type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { Bare } from '../form/Bare.tsx';
import { textOf } from './typed.ts';
import { TypedField } from './TypedField.tsx';
import { type FieldState } from './use-field.ts';

const LENGTH = { kind: 'length', range: { least: 0, greatest: 0, unit: 'in' }, allowed: '' } as const;

/** Two outside sizes are typed as `2 x 3`. */
function outsideText(value: Json | undefined): Json | undefined {
  return Array.isArray(value) ? (value as readonly Json[]).map(textOf).join(' x ') : value;
}

function outsideValue(typed: Json | undefined): Json {
  if (typeof typed !== 'string' || !/ x /i.test(typed)) return typed ?? '';
  return typed.split(/ x /i).map((part) => (String(Number(part)) === part ? Number(part) : part));
}

/** A section of the shop's own, by outside size and wall; one that the file writes as a text stays a text. */
export function OwnSectionField({ state, describedBy }: { readonly state: FieldState; readonly describedBy: string | undefined }): ReactElement {
  const { value } = state;
  if (!isJsonObject(value)) return <TypedField state={state} describedBy={describedBy} />;
  const parts = [['outside', outsideText(value['outside'])], ['wall', value['wall']]] as const;
  return (
    <>
      {parts.map(([part, shown]) => (
        <span key={part} className="pair-part">
          <Bare
            what={LENGTH} id={part === 'outside' ? state.id : `${state.id}-${part}`} label={`${say(`place-brief.${part}`)}: ${state.label}`} shown={say(`place-brief.${part}`)}
            value={shown} invalid={state.fault !== ''} describedBy={describedBy} onFocus={state.look} onLeave={state.settle}
            write={(next) => { state.write({ ...value, [part]: part === 'outside' ? outsideValue(next) : (next ?? '') }); }}
          />
        </span>
      ))}
    </>
  );
}
