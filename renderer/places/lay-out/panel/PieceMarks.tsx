import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { useStore } from '../../../project/store.ts';
import { type PieceTitle } from '../../../worker/protocol.ts';

/** Marks of the pieces of a run, each with how many there are of it there. */
export function PieceMarks({ pieces, run }: { readonly pieces: readonly PieceTitle[]; readonly run: string }): ReactElement | null {
  const { selection, select } = useDeskWindow();
  const { mark: chosen } = useStore(selection);
  const counts = new Map<string, number>();
  for (const piece of pieces) if (piece.run === run) counts.set(piece.mark, (counts.get(piece.mark) ?? 0) + 1);
  if (counts.size === 0) return null;
  return (
    <section aria-label={say('place-lay-out.pieces')}>
      <h3>{say('place-lay-out.pieces')}</h3>
      <ul className="marks">
        {[...counts].map(([mark, count]) => (
          <li key={mark}>
            <button type="button" aria-pressed={mark === chosen} onClick={() => { select({ mark: mark === chosen ? null : mark }); }}>
              {count === 1 ? mark : say('place-lay-out.mark-count', { mark, count })}
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
