import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

export function CheckPlace(): ReactElement {
  return <h1>{say('place-check.title')}</h1>;
}
