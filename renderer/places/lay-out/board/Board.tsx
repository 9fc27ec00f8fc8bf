import { type ReactElement, useEffect, useRef } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { type BoardState } from './board-state.ts';
import './board.css';
import { makeBoard } from './make-board.ts';

/** The sheet with the live plan. It draws itself; React only gives it its place. */
export function Board({ state }: { readonly state: BoardState }): ReactElement {
  const desk = useDeskWindow();
  const svg = useRef<SVGSVGElement>(null);
  const tag = useRef<HTMLDivElement>(null);
  useEffect(() => (svg.current === null || tag.current === null ? undefined : makeBoard(svg.current, tag.current, desk, state)), [desk, state]);
  return (
    <>
      <svg ref={svg} className="board-sheet" role="group" tabIndex={0} aria-label={say('place-lay-out.board')} aria-describedby="board-help" />
      <p id="board-help" className="unseen">{say('place-lay-out.board-help')}</p>
      <div ref={tag} className="board-figure" aria-hidden="true" hidden />
    </>
  );
}
