import { type ReactElement } from 'react';
import { type DefaultUsed } from '../../../core/brief/index.ts';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';

/** What the project leaves to the program, with the way to each field. */
export function Defaults({ defaults }: { readonly defaults: readonly DefaultUsed[] }): ReactElement {
  const { go } = useDeskWindow();
  return (
    <section className="defaults" aria-labelledby="defaults">
      <h2 id="defaults">{say('place-check.defaults')} <small>{say('place-check.defaults-count', { count: defaults.length })}</small></h2>
      {defaults.length === 0 ? <p>{say('place-check.no-defaults')}</p> : (
        <table>
          <caption className="unseen">{say('place-check.defaults')}</caption>
          <thead><tr><th scope="col">{say('place-check.field')}</th><th scope="col">{say('place-check.value')}</th></tr></thead>
          <tbody>
            {defaults.map((used) => (
              <tr key={used.path}>
                <td><button type="button" onClick={() => { go('brief', { field: used.path }); }}>{used.path}</button></td>
                <td>{used.value}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}
