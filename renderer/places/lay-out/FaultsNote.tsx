import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { useCalm } from './use-calm.ts';

/** Says that the plan is not that of the project as it stands, and what is wrong with the project. */
export function FaultsNote(): ReactElement | null {
  const { worked, go } = useDeskWindow();
  const { answer, laid } = useCalm(worked);
  const first = answer?.faults[0];
  if (first === undefined) return null;
  return (
    <div className="faults-note" role="status">
      <p>
        <strong>{say(laid === null ? 'place-lay-out.no-plan' : 'place-lay-out.older-plan')}</strong>{' '}
        {first.path === '' ? first.words : say('place-lay-out.fault', { path: first.path, words: first.words })}
        {answer !== null && answer.faults.length > 1 ? ` ${say('place-lay-out.more-faults', { count: answer.faults.length - 1 })}` : ''}
      </p>
      <button type="button" onClick={() => { go('brief', { field: first.path }); }}>{say('place-lay-out.to-brief')}</button>
    </div>
  );
}
