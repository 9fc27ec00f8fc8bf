import { useEffect, useRef, type ReactElement } from 'react';
import { choiceOf } from '../../../core/brief/format/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { projectOf } from '../field/use-project.ts';
import { Entry } from './Entry.tsx';
import { GroupFaults } from './GroupFaults.tsx';
import { further, knownField, labelAt } from './part-words.ts';
import { PartHelp } from './PartHelp.tsx';
import { ListStanding } from './ListStanding.tsx';
import { startersOf, type Starter } from './starters.ts';
import { useList } from './use-list.ts';

/** A list of groups in their order: runs, openings, ramps. Entries are added, moved up and down, removed. */
export function EntryList({ path }: { readonly path: string }): ReactElement {
  const { session } = useDeskWindow();
  const ways = useList(path);
  const box = useRef<HTMLFieldSetElement>(null);
  const added = useRef(false);
  const count = ways.count ?? 0;
  useEffect(() => {
    if (!added.current) return;
    added.current = false;
    const last = [...(box.current?.querySelectorAll('.entries > .entry') ?? [])].at(-1);
    last?.querySelector<HTMLElement>('input, select')?.focus();
  }, [count]);
  const words = (kind: string): string => {
    if (kind === '') return say('place-brief.add', { field: labelAt(further(path, 0)) });
    return say('place-brief.add', { field: choiceOf(knownField(further(further(path, 0), 'kind')), kind) });
  };
  const add = (starter: Starter): void => {
    added.current = true;
    ways.add(starter.entry(projectOf(session)));
  };
  return (
    <fieldset className="part" data-field={path} tabIndex={-1} ref={box}>
      <legend>{labelAt(path)}</legend>
      <PartHelp path={path} />
      <ListStanding path={path} ways={ways} />
      <GroupFaults path={path} />
      <div className="entries">
        {Array.from({ length: count }, (_, index) => <Entry key={index} list={path} index={index} ways={ways} />)}
        <div className="entry-add">
          {startersOf(path).map((starter) => <button key={starter.kind} type="button" onClick={() => { add(starter); }}>{words(starter.kind)}</button>)}
        </div>
      </div>
    </fieldset>
  );
}
