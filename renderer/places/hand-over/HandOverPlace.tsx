import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

export function HandOverPlace(): ReactElement {
  return <h1>{say('place-hand-over.title')}</h1>;
}
