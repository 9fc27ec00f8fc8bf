import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

export function MakePlace(): ReactElement {
  return <h1>{say('place-make.title')}</h1>;
}
