import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { type Asking } from './asking.ts';

type Props = Extract<Asking, { readonly kind: 'refused' }>;

/** Says what could not be done and why. */
export function RefusedDialog({ message, answer }: Props): ReactElement {
  const leave = (): void => { answer(null); };
  return (
    <Dialog
      title={say('place-projects.refused.title')}
      onLeave={leave}
      answers={<button type="button" className="main" onClick={leave}>{say('place-projects.close')}</button>}
    >
      <p className="attention">{message}</p>
    </Dialog>
  );
}
