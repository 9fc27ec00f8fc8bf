import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

export function LayOutPlace(): ReactElement {
  return <h1>{say('place-lay-out.title')}</h1>;
}
