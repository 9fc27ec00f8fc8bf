import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { Board } from './board/Board.tsx';
import { boardState } from './board/board-state.ts';
import { FigureField } from './board/FigureField.tsx';
import { FaultsNote } from './FaultsNote.tsx';
import './lay-out.css';
import { Legend } from './Legend.tsx';
import { Panel } from './panel/Panel.tsx';

/** The live plan on its sheet, and beside it the figures of what is chosen. */
export function LayOutPlace(): ReactElement {
  const state = boardState(useDeskWindow());
  return (
    <div
      className="lay-out"
      onKeyDown={(event) => {
        // Wherever the focus is, measuring ends by the key that the board says.
        if (event.key === 'Escape') state.measuring.set(null);
      }}
    >
      <section className="lay-out-board" aria-label={say('place-lay-out.plan')}>
        <Board state={state} />
        <FigureField state={state} />
        <FaultsNote />
      </section>
      <Legend state={state} />
      <Panel state={state} />
    </div>
  );
}
