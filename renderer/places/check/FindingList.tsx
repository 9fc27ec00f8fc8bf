import { type ReactElement } from 'react';
import { inOrder } from '../../../core/checks/index.ts';
import { say } from '../../../core/text/index.ts';
import { type Units } from '../../worker/protocol.ts';
import { FindingRow } from './FindingRow.tsx';
import { type Numbered } from './numbered.ts';

export interface FindingListProps {
  readonly shown: readonly Numbered[];
  readonly units: Units;
  readonly chosen: number | null;
  onChoose(index: number): void;
}

/** Findings by result, in each the most dangerous first. */
export function FindingList({ shown, units, chosen, onChoose }: FindingListProps): ReactElement {
  if (shown.length === 0) return <p className="check-none">{say('place-check.none')}</p>;
  const indexOf = new Map(shown.map(({ finding, index }) => [finding, index]));
  return (
    <>
      {inOrder(shown.map(({ finding }) => finding)).map((group) => (
        <section key={group.result} className={`finding-group group-${group.result}`} aria-labelledby={`group-${group.result}`}>
          <h2 id={`group-${group.result}`}>{say(`place-check.group.${group.result}`)} <small>{group.findings.length}</small></h2>
          <ol>
            {group.findings.map((finding) => {
              const index = indexOf.get(finding) ?? -1;
              return <li key={index}><FindingRow finding={finding} units={units} chosen={index === chosen} onChoose={() => { onChoose(index); }} /></li>;
            })}
          </ol>
        </section>
      ))}
    </>
  );
}
