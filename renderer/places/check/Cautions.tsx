import { type ReactElement } from 'react';
import { CAUTIONS } from '../../../core/drawings/cautions.ts';
import { say } from '../../../core/text/index.ts';

/** What the cover of the drawings warns of, in full. */
export function Cautions(): ReactElement {
  return (
    <section className="cautions" aria-labelledby="cautions">
      <h2 id="cautions">{say('place-check.cautions')}</h2>
      <ul>
        <li><strong>{say('report.caution')}</strong></li>
        {CAUTIONS.map((key) => <li key={key}>{say(key)}</li>)}
        <li>{say('report.trust')}</li>
      </ul>
    </section>
  );
}
