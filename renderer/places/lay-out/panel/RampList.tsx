import { type ReactElement } from 'react';
import { isJsonObject, type Json, type JsonObject } from '../../../../core/brief/json/types.ts';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { valueAt, withValue } from '../../../project/json-path.ts';
import { rampPaths } from '../edits/run-paths.ts';
import { addRamp } from '../edits/subjects.ts';
import { FieldList } from './FieldList.tsx';

/** Ramps and docks, at the end of the walk. */
export function RampList({ project }: { readonly project: JsonObject }): ReactElement {
  const { session } = useDeskWindow();
  const said = valueAt(project, 'ramps');
  const ramps = Array.isArray(said) ? (said as readonly Json[]) : [];
  return (
    <section aria-label={say('place-lay-out.ramps')}>
      <h3>{say('place-lay-out.ramps')}</h3>
      <ul>
        {ramps.map((ramp, index) => {
          const path = `ramps[${String(index)}]`;
          const kind = isJsonObject(ramp) && ramp['kind'] === 'unload' ? 'unload' : 'load';
          return (
            <li key={path} className="stands">
              <details>
                <summary>{say(`place-lay-out.ramp.${kind}`, { number: index + 1 })}</summary>
                <FieldList paths={rampPaths(project, index)} />
                <button type="button" onClick={() => { session.change(withValue(project, path, undefined), { label: say('place-lay-out.ramp.remove') }); }}>
                  {say('place-lay-out.ramp.remove')}
                </button>
              </details>
            </li>
          );
        })}
      </ul>
      <div className="ways">
        {(['load', 'unload'] as const).map((kind) => (
          <button key={kind} type="button" onClick={() => { session.change(addRamp(project, kind), { label: say(`place-lay-out.ramp.add.${kind}`) }); }}>
            {say(`place-lay-out.ramp.add.${kind}`)}
          </button>
        ))}
      </div>
    </section>
  );
}
