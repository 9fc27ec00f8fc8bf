import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

export function StakeOutPlace(): ReactElement {
  return <h1>{say('place-stake-out.title')}</h1>;
}
