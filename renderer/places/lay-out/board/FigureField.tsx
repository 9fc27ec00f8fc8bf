import { type ReactElement, useState } from 'react';
import { type Handle } from '../../../../core/board/types.ts';
import { say } from '../../../../core/text/index.ts';
import { useDeskWindow } from '../../../app/desk-window.ts';
import { useStore } from '../../../project/store.ts';
import { type Units } from '../../../worker/protocol.ts';
import { printFigure, typedFigure, writtenFigure } from '../figures.ts';
import { type BoardState } from './board-state.ts';
import { toScreen } from './view.ts';

/** Where the figure of a handle is typed, at the handle, in any unit. */
export function FigureField({ state }: { readonly state: BoardState }): ReactElement | null {
  const { worked } = useDeskWindow();
  const id = useStore(state.typing);
  const { laid } = useStore(worked);
  const view = useStore(state.view);
  const handle = laid?.handles.find((one) => one.id === id);
  if (handle === undefined || laid === null || view === null) return null;
  const size = state.size();
  const { x, y } = toScreen(view, size, handle.at);
  // The field keeps to the sheet, wherever its handle is.
  const left = Math.max(8, Math.min(x + 24, size.width - 310));
  const top = Math.max(8, Math.min(y + 16, size.height - 150));
  return <Typed key={handle.id} handle={handle} units={laid.units} state={state} left={left} top={top} />;
}

interface TypedProps {
  readonly handle: Handle;
  readonly units: Units;
  readonly state: BoardState;
  readonly left: number;
  readonly top: number;
}

function Typed({ handle, units, state, left, top }: TypedProps): ReactElement {
  const { session } = useDeskWindow();
  const { figure, label, least, greatest } = handle;
  const [text, setText] = useState(() => printFigure(figure, handle.value, units));
  const [wrong, setWrong] = useState(false);
  const allowed = say('place-lay-out.typed-allowed', { least: printFigure(figure, least, units), greatest: printFigure(figure, greatest, units) });
  const leave = (): void => {
    state.typing.set(null);
    state.wanted.set(handle.id);
  };
  const write = (): void => {
    const value = typedFigure(figure, text, units);
    // A figure at the very end of its range may be off it by rounding.
    if (value === null || value < least - 1e-9 || value > greatest + 1e-9) {
      setWrong(true);
      return;
    }
    session.setField(handle.path, writtenFigure(figure, value, units), { label: say('place-lay-out.drag', { label }) });
    leave();
  };
  return (
    <form
      className="figure-field"
      style={{ left, top }}
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
      onKeyDown={(event) => {
        if (event.key === 'Escape') leave();
      }}
    >
      <label>
        <span>{label}</span>
        <input
          value={text}
          autoFocus
          autoComplete="off"
          spellCheck={false}
          aria-invalid={wrong ? true : undefined}
          aria-describedby="figure-allowed"
          onFocus={(event) => { event.currentTarget.select(); }}
          onChange={(event) => {
            setText(event.currentTarget.value);
            setWrong(false);
          }}
        />
      </label>
      <p id="figure-allowed" role={wrong ? 'alert' : undefined} className={wrong ? 'attention' : 'faint'}>
        {wrong ? say(figure === 'angle' ? 'place-lay-out.typed-wrong-angle' : 'place-lay-out.typed-wrong', { text, allowed }) : allowed}
      </p>
      <div className="ways">
        <button type="submit" className="main">{say('place-lay-out.typed-set')}</button>
        <button type="button" onClick={leave}>{say('place-lay-out.typed-leave')}</button>
      </div>
    </form>
  );
}
