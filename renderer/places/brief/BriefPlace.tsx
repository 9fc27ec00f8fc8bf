import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';

export function BriefPlace(): ReactElement {
  return <h1>{say('place-brief.title')}</h1>;
}
