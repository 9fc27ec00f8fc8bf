import { type ReactElement } from 'react';
import { standingAt, type Standing } from '../../../core/brief/format/index.ts';
import { say } from '../../../core/text/index.ts';
import { pathSteps } from '../../project/json-path.ts';
import { useProject } from '../field/use-project.ts';
import { knownField, labelAt } from './part-words.ts';
import { type ListState } from './use-list.ts';

/** What holds while the file does not say a list, or the way back to that. */
export function ListStanding({ path, ways }: { readonly path: string; readonly ways: Pick<ListState, 'count' | 'restore'> }): ReactElement | null {
  const standing = JSON.parse(useProject((project) => JSON.stringify(standingAt(pathSteps(path), project)))) as Standing | null;
  const words = standing?.words ?? null;
  if (words === null || knownField(path).asked !== 'never') return null;
  if (ways.count === null) return <p className="part-ways standing">{say('place-brief.default', { value: words })}</p>;
  // A list that is none by default is emptied entry by entry.
  if (standing?.value === undefined) return null;
  return (
    <p className="part-ways">
      <button type="button" className="quiet" aria-label={say('place-brief.restore-of', { field: labelAt(path) })} title={say('place-brief.default', { value: words })} onClick={ways.restore}>
        {say('place-brief.restore')}
      </button>
    </p>
  );
}
