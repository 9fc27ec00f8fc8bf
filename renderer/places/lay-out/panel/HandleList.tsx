import { type ReactElement } from 'react';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { type Laid } from '../../../worker/protocol.ts';
import { type BoardState } from '../board/board-state.ts';
import { printFigure } from '../figures.ts';

/** Everything on the board that may be dragged, with its figure: choosing one puts the hand on it. */
export function HandleList({ laid, state }: { readonly laid: Laid; readonly state: BoardState }): ReactElement {
  const { select } = useDeskWindow();
  return (
    <section aria-label={say('place-lay-out.handles')}>
      <h3>{say('place-lay-out.handles')}</h3>
      <ul className="handle-list">
        {laid.handles.map((handle) => (
          <li key={handle.id}>
            <button
              type="button"
              className="plain"
              onClick={() => {
                select({ run: handle.run, field: handle.path, mark: null, finding: null });
                state.wanted.set(handle.id);
              }}
            >
              <span>{handle.label}</span> <span className="figure">{printFigure(handle.figure, handle.value, laid.units)}</span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
