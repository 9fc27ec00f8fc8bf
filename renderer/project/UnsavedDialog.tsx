import { type ReactElement } from 'react';
import { say } from '../../core/text/index.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { type Asking } from './asking.ts';

type Props = Extract<Asking, { readonly kind: 'unsaved' }>;

/** Asked before a project with unsaved work gives way. */
export function UnsavedDialog({ name, answer }: Props): ReactElement {
  return (
    <Dialog
      title={say('place-projects.unsaved.title')}
      onLeave={() => { answer('stay'); }}
      answers={
        <>
          <button type="button" onClick={() => { answer('stay'); }}>{say('place-projects.unsaved.stay')}</button>
          <button type="button" onClick={() => { answer('leave'); }}>{say('place-projects.unsaved.leave')}</button>
          <button type="button" className="main" onClick={() => { answer('save'); }}>{say('place-projects.unsaved.save')}</button>
        </>
      }
    >
      <p>{say('place-projects.unsaved.words', { name })}</p>
    </Dialog>
  );
}
