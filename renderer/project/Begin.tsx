import { type ReactElement } from 'react';
import { parseJson } from '../../core/brief/json/parse-json.ts';
import { isJsonObject } from '../../core/brief/json/types.ts';
import { say } from '../../core/text/index.ts';
import { useDeskWindow } from '../app/desk-window.ts';
import { EXAMPLES } from './examples.ts';

/** Before a project is open: what to begin with. */
export function Begin(): ReactElement {
  const { session } = useDeskWindow();
  return (
    <main>
      <h1>{say('window.name')}</h1>
      <ul>
        {EXAMPLES.map((example) => (
          <li key={example.name}>
            <button
              type="button"
              onClick={() => {
                const read = parseJson(example.text);
                if (isJsonObject(read.value)) session.open(read.value, null, example.name, null);
              }}
            >
              {example.name}
            </button>
          </li>
        ))}
      </ul>
    </main>
  );
}
