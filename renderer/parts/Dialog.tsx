import { type ReactElement, type ReactNode, useId, useLayoutEffect, useRef } from 'react';
import './dialog.css';

export interface DialogProps {
  readonly title: string;
  /** Called for Escape: the answer that changes nothing. */
  readonly onLeave: () => void;
  readonly children: ReactNode;
  /** The answers, the safest first. */
  readonly answers: ReactNode;
}

/** A question over the page: nothing else can be reached until it is answered, and the focus goes back to where it was. */
export function Dialog({ title, onLeave, children, answers }: DialogProps): ReactElement {
  const place = useRef<HTMLDialogElement>(null);
  const name = useId();
  useLayoutEffect(() => {
    const dialog = place.current;
    const before = document.activeElement;
    if (dialog !== null && !dialog.open) dialog.showModal();
    return () => {
      dialog?.close();
      if (before instanceof HTMLElement && before.isConnected) before.focus();
    };
  }, []);
  return (
    <dialog
      ref={place}
      className="dialog"
      aria-labelledby={name}
      onCancel={(event) => {
        event.preventDefault();
        onLeave();
      }}
    >
      <h2 id={name}>{title}</h2>
      <div className="dialog-body">{children}</div>
      <div className="dialog-answers">{answers}</div>
    </dialog>
  );
}
