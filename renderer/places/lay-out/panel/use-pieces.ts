import { useEffect, useState } from 'react';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { type Laid, type PieceTitle } from '../../../work/protocol.ts';

/** When a hand has rested for so long the pieces are asked for, milliseconds. */
const REST = 200;

/** The pieces of the design that is shown, a moment after it has come to rest. */
export function usePieces(laid: Laid | null): readonly PieceTitle[] {
  const { work } = useDeskWindow();
  const [pieces, setPieces] = useState<readonly PieceTitle[]>([]);
  useEffect(() => {
    if (laid === null) return undefined;
    let away = false;
    const waiting = setTimeout(() => {
      void work.ask('pieces', null).then((answer) => { if (!away) setPieces(answer); });
    }, REST);
    return () => {
      away = true;
      clearTimeout(waiting);
    };
  }, [work, laid]);
  return pieces;
}
