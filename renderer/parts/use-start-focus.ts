import { type RefObject, useEffect, useRef } from 'react';

/**
 * Puts the focus at the start of what has just come in sight, so that the keys begin there and not where something has gone: for the
 * element with the answer as its `ref` and -1 as its `tabIndex`. Again where `what` changes; nothing where it is null.
 */
export function useStartFocus<E extends HTMLElement>(what: string | number | null): RefObject<E | null> {
  const place = useRef<E>(null);
  useEffect(() => {
    if (what !== null) place.current?.focus({ preventScroll: true });
  }, [what]);
  return place;
}
