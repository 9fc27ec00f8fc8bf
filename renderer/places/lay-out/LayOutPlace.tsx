import { type ReactElement } from 'react';
import { say } from '../../../core/text/index.ts';
import { useDeskWindow } from '../../app/desk-window.ts';
import { Board } from './board/Board.tsx';
import { boardState } from './board/board-state.ts';
import './lay-out.css';

/** The live plan on its sheet, and beside it the figures of what is chosen. */
export function LayOutPlace(): ReactElement {
  const state = boardState(useDeskWindow());
  return (
    <div className="lay-out">
      <h1 className="unseen">{say('place-lay-out.title')}</h1>
      <section className="lay-out-board" aria-label={say('place-lay-out.plan')}>
        <Board state={state} />
      </section>
    </div>
  );
}
