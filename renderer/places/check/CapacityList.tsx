import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

/** How many head the facility takes, in sentences. */
export function CapacityList({ lines }: { readonly lines: readonly string[] }): ReactElement {
  return (
    <section className="capacity" aria-labelledby="capacity">
      <h2 id="capacity">{say('capacity.title')}</h2>
      <ul>{lines.map((line) => <li key={line}>{line}</li>)}</ul>
    </section>
  );
}
