import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { type Asking } from './asking.ts';

type Props = Extract<Asking, { readonly kind: 'unreadable' }>;

/** Says why a file was not opened, fault by fault. */
export function UnreadableDialog({ name, faults, answer }: Props): ReactElement {
  const leave = (): void => { answer(null); };
  return (
    <Dialog
      title={say('place-projects.unreadable.title')}
      onLeave={leave}
      answers={<button type="button" className="main" onClick={leave}>{say('place-projects.close')}</button>}
    >
      <p>{say('place-projects.unreadable.words', { name })}</p>
      <ul>{faults.map((fault) => <li key={fault} className="attention">{fault}</li>)}</ul>
    </Dialog>
  );
}
