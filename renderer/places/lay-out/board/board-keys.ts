import { CLOSER, fitWhole, panBoard, zoomBoard } from './board-moves.ts';
import { type Scene } from './scene.ts';

/** How far an arrow key moves the sheet, pixels; with Shift four times as far. */
const PAN = 60;

/** Keys of the board while it, or something on it, has the focus. `measure` is asked first. */
export function boardKeys(scene: Scene, measure: (event: KeyboardEvent) => boolean): () => void {
  const { desk, state, svg, size } = scene;
  const pans: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [PAN, 0], ArrowRight: [-PAN, 0], ArrowUp: [0, PAN], ArrowDown: [0, -PAN] };

  const handled = (event: KeyboardEvent): boolean => {
    if (event.ctrlKey || event.metaKey || event.altKey) return false;
    if (measure(event)) return true;
    const pan = pans[event.key];
    if (pan !== undefined) {
      const far = event.shiftKey ? 4 : 1;
      panBoard(state.view, pan[0] * far, pan[1] * far);
      return true;
    }
    switch (event.key) {
      case '+':
      case '=':
        zoomBoard(state.view, size(), CLOSER);
        return true;
      case '-':
      case '_':
        zoomBoard(state.view, size(), 1 / CLOSER);
        return true;
      case '0':
        fitWhole(state, desk.worked.get().laid?.picture ?? null);
        return true;
      case 'm':
      case 'M':
        state.measuring.set(state.measuring.get() === null ? { from: null, to: null } : null);
        return true;
      case 'Escape':
        if (state.measuring.get() !== null) state.measuring.set(null);
        else desk.select({ mark: null, finding: null, field: null });
        return true;
      default:
        return false;
    }
  };
  const key = (event: KeyboardEvent): void => {
    if (!handled(event)) return;
    event.preventDefault();
    event.stopPropagation();
  };
  svg.node.addEventListener('keydown', key);
  return () => { svg.node.removeEventListener('keydown', key); };
}
