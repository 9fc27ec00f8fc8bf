import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { type PieceTitle } from '../../../worker/protocol.ts';
import { type BoardState } from '../board/board-state.ts';

/** The piece mark that is chosen: how many, what they are, and the ways to see it. */
export function ChosenPiece({ mark, pieces, state }: { readonly mark: string; readonly pieces: readonly PieceTitle[]; readonly state: BoardState }): ReactElement {
  const { select, go } = useDeskWindow();
  const alike = pieces.filter((piece) => piece.mark === mark);
  const runs = [...new Set(alike.map(({ run }) => run))];
  return (
    <section className="chosen-piece" aria-label={say('place-lay-out.piece', { mark })}>
      <h2>{say('place-lay-out.piece', { mark })}</h2>
      <p>{alike.length === 0 ? say('place-lay-out.piece-gone') : say('place-lay-out.piece-where', { count: alike.length, runs: runs.join(', ') })}</p>
      <div className="ways">
        <button type="button" disabled={alike.length === 0} onClick={() => { state.sought.set(mark); }}>{say('place-lay-out.piece-plan')}</button>
        <button type="button" onClick={() => { go('make', { mark }); }}>{say('place-lay-out.piece-make')}</button>
        <button type="button" onClick={() => { select({ mark: null }); }}>{say('place-lay-out.piece-leave')}</button>
      </div>
    </section>
  );
}
