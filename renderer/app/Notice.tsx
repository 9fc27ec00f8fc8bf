import { type ReactElement, useEffect } from 'react';
import { useStore } from '../project/store.ts';
import { useDeskWindow } from './desk-window.ts';

/** How long a word in passing stands: long enough to be read twice. */
const STANDS = 6000;

/** What a person is told in passing: it takes no focus and goes by itself. */
export function Notice(): ReactElement {
  const { notice } = useDeskWindow();
  const words = useStore(notice);
  useEffect(() => {
    if (words === null) return;
    const timer = setTimeout(() => { notice.set(null); }, STANDS);
    return () => { clearTimeout(timer); };
  }, [notice, words]);
  return <div className="notice" role="status" aria-live="polite">{words}</div>;
}
