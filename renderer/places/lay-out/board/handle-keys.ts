import { type Handle } from '../../../../core/board/types.ts';
import { say } from '../../../../core/text/index.ts';
import { stepped, writtenFigure } from '../figures.ts';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { present } from '../../../project/history.ts';
import { type Scene } from './scene.ts';

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1, PageUp: 10, PageDown: -10 };

/** Arrow keys change the figure by a step, with Shift by ten; a key held down is one gesture. Enter asks for the figure itself. */
export function handleKeys(scene: Scene, node: SVGElement, now: () => Handle): () => void {
  const { desk, state } = scene;
  /** What was asked for last: the figure to go on from while it is not worked out yet. */
  let asked: number | null = null;
  let gesture = '';

  const key = (event: KeyboardEvent): void => {
    const units = desk.worked.get().laid?.units;
    if (event.ctrlKey || event.metaKey || units === undefined) return;
    const handle = now();
    if (event.key === 'Enter') {
      event.preventDefault();
      event.stopPropagation();
      state.typing.set(handle.id);
      return;
    }
    const steps = STEPS[event.key];
    if (steps === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    if (!event.repeat) gesture = `keys ${handle.id} ${event.timeStamp.toFixed(0)}`;
    const before = awaited(desk) ? (asked ?? handle.value) : handle.value;
    const value = stepped(handle, before, event.shiftKey ? steps * 10 : steps, units);
    if (value === before) return;
    asked = value;
    desk.session.setField(handle.path, writtenFigure(handle.figure, value, units), { label: say('place-lay-out.drag', { label: handle.label }), gesture });
  };
  const settle = (): void => { desk.session.settle(); };
  const chosen = (): void => {
    const { run, path } = now();
    const { selection } = desk;
    if (selection.get().run !== run || selection.get().field !== path) desk.select({ run, field: path });
  };
  const typed = (): void => { state.typing.set(now().id); };
  node.addEventListener('keydown', key);
  node.addEventListener('keyup', settle);
  node.addEventListener('focus', chosen);
  node.addEventListener('dblclick', typed);
  return () => {
    node.removeEventListener('keydown', key);
    node.removeEventListener('keyup', settle);
    node.removeEventListener('focus', chosen);
    node.removeEventListener('dblclick', typed);
  };
}

/** Whether the present state of the project is still being worked out. */
function awaited({ session, worked }: DeskWindow): boolean {
  const open = session.get();
  return open !== null && present(open.history) !== worked.get().project;
}
