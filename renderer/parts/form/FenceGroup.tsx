import { useState, type ReactElement } from 'react';
import { isJsonObject } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useStore } from '../../project/store.ts';
import { valueAt } from '../../project/json-path.ts';
import { FieldRow } from '../field/FieldRow.tsx';
import { useAllFaults } from '../field/use-faults.ts';
import { useProject } from '../field/use-project.ts';
import { GroupFaults } from './GroupFaults.tsx';
import { anyUnder } from './own-faults.ts';
import { further, knownField, labelAt } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';

/**
 * A fence's settings. The crowd pen's stand open; any other takes what it does not say from the one around it, and stays folded until
 * it says something of its own, a fault or another place leads here, or a person unfolds it.
 */
export function FenceGroup({ path }: { readonly path: string }): ReactElement {
  const { selection, select } = useDeskWindow();
  const { what } = knownField(path);
  const names = what.kind === 'group' ? Object.keys(what.fields) : [];
  const sides = names.filter((name) => name === 'left' || name === 'right');
  const settings = names.filter((name) => name !== 'left' && name !== 'right');
  const said = useProject((project) => {
    const group = valueAt(project, path);
    return isJsonObject(group) ? settings.filter((name) => name in group).map((name) => labelAt(further(path, name))).join(', ') : '';
  });
  const sidesSaid = useProject((project) => sides.some((side) => Object.keys(valueAt(project, further(path, side)) ?? {}).length > 0));
  const faulty = anyUnder(useAllFaults(), path);
  const { field } = useStore(selection);
  const sought = field !== null && `${field}.`.startsWith(`${path}.`);
  const [unfolded, setUnfolded] = useState<boolean | null>(null);
  const main = path === 'fences.crowdPen';
  // A fault, and a field that the hand is on or that another place leads to, are never folded away.
  const held = main || faulty || sought;
  const open = held || (unfolded ?? (said !== '' || sidesSaid));
  const fold = (): void => {
    setUnfolded(!open);
    if (sought) select({ field: null });
  };
  return (
    <fieldset className="part fence" data-field={path} tabIndex={-1}>
      <legend>{labelAt(path)}</legend>
      {main ? <PartHelp path={path} /> : (
        <div className="fold">
          <button type="button" aria-expanded={open} disabled={faulty} onClick={fold}>
            {say(open ? 'place-brief.fold' : 'place-brief.unfold')}<span className="unseen">: {labelAt(path)}</span>
          </button>
          <span className={said === '' && !sidesSaid ? 'standing' : 'reading'}>{saidWords(path, said, sidesSaid)}</span>
        </div>
      )}
      {open ? (
        <>
          <GroupFaults path={path} rows={names} />
          {settings.map((name) => <FieldRow key={name} path={further(path, name)} />)}
          {sides.map((side) => <FenceGroup key={side} path={further(path, side)} />)}
        </>
      ) : null}
    </fieldset>
  );
}

/** What a fence says of its own, on itself or on a side. */
function saidWords(path: string, said: string, sidesSaid: boolean): string {
  if (said !== '') return say('place-brief.own', { fields: said });
  return say(sidesSaid ? 'place-brief.own-sides' : 'place-brief.all-as', { place: around(path) });
}

/** What a folded fence is built as. */
function around(path: string): string {
  const [, place = '', side] = path.split('.');
  if (side === undefined) return say('place-brief.of.crowdPen');
  switch (place) {
    case 'alley': case 'junction': case 'chute': case 'ramp': case 'pad': case 'pens':
      return say(`place-brief.of.${place}`);
    default:
      throw new Error(`no such fence: ${path}`);
  }
}
