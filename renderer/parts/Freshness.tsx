import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { useStore } from '../project/store.ts';
import { type Asked } from '../worker/asked.ts';

/** Whether what is seen is of the project as it stands: being worked out, or the last good one where the project has faults. */
export function Freshness({ asked }: { readonly asked: Asked<unknown> }): ReactElement {
  const { worked, go } = useDeskWindow();
  const { answer, laidProject } = useStore(worked);
  const fault = answer?.faults[0];
  const behind = asked.of !== laidProject;
  return (
    <div className="freshness" role="status">
      {fault === undefined ? null : (
        <p className="attention">
          <span>{say('place-make.last-good', { count: answer?.faults.length ?? 0 })}</span>
          <button type="button" onClick={() => { go('brief', { field: fault.path }); }}>{say('place-make.to-fault')}</button>
        </p>
      )}
      {fault === undefined && behind && laidProject !== null ? <p>{say(asked.answer === null ? 'place-make.working' : 'place-make.behind')}</p> : null}
      {asked.broken === null ? null : <p className="attention">{say('place-make.broken', { reason: asked.broken })}</p>}
    </div>
  );
}
