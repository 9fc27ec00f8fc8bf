import { type PlanPoint } from '../../../../core/base/points.ts';
import { planUnder, type Scene } from './scene.ts';
import { panBy, zoomAbout } from './view.ts';

/** A hand that moves by less, in pixels, has chosen a place and not moved the sheet. */
const STILL = 4;
/** How far the wheel's turn, in pixels of scrolling, brings the sheet closer: about a tenth for one notch. */
const WHEEL = 0.0011;
/** Pixels in a line of scrolling, for wheels that count in lines. */
const LINE = 16;

interface Hand {
  x: number;
  y: number;
}

/** The sheet is moved by dragging it, brought closer by the wheel and by two fingers; a place is chosen by a press that stays where it is. */
export function boardPointer(scene: Scene, choose: (at: PlanPoint) => void, hover: (at: PlanPoint) => void): () => void {
  const { state, svg, size } = scene;
  const node = svg.node;
  const hands = new Map<number, Hand>();
  let moved = 0;

  const local = (event: { readonly clientX: number; readonly clientY: number }): Hand => {
    const { x, y } = scene.corner();
    return { x: event.clientX - x, y: event.clientY - y };
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0 && event.button !== 1) return;
    if (hands.size === 0) moved = 0;
    hands.set(event.pointerId, local(event));
    node.setPointerCapture(event.pointerId);
  };
  const move = (event: PointerEvent): void => {
    const under = planUnder(scene, event);
    if (hands.size === 0 && under !== null) hover(under);
    const hand = hands.get(event.pointerId);
    const view = state.view.get();
    if (hand === undefined || view === null) return;
    const next = local(event);
    moved = Math.max(moved, Math.hypot(next.x - hand.x, next.y - hand.y));
    if (moved < STILL && hands.size === 1) return;
    moved = STILL;
    const other = [...hands].find(([id]) => id !== event.pointerId)?.[1];
    if (other === undefined) state.view.set(panBy(view, next.x - hand.x, next.y - hand.y));
    else {
      const before = Math.hypot(hand.x - other.x, hand.y - other.y);
      const after = Math.hypot(next.x - other.x, next.y - other.y);
      const half = panBy(view, (next.x - hand.x) / 2, (next.y - hand.y) / 2);
      const between = { x: (next.x + other.x) / 2, y: (next.y + other.y) / 2 };
      state.view.set(before > 0 && after > 0 ? zoomAbout(half, size(), between, after / before) : half);
    }
    hand.x = next.x;
    hand.y = next.y;
    node.classList.add('board-moving');
  };
  const up = (event: PointerEvent): void => {
    if (!hands.delete(event.pointerId)) return;
    node.classList.remove('board-moving');
    const at = planUnder(scene, event);
    if (event.type === 'pointerup' && hands.size === 0 && moved < STILL && at !== null) choose(at);
  };
  const wheel = (event: WheelEvent): void => {
    event.preventDefault();
    const view = state.view.get();
    if (view === null) return;
    const turn = event.deltaY * (event.deltaMode === WheelEvent.DOM_DELTA_LINE ? LINE : 1);
    // A pinch on a pad comes as a wheel with Ctrl, in small turns.
    const factor = Math.exp(-turn * WHEEL * (event.ctrlKey ? 6 : 1));
    state.view.set(zoomAbout(view, size(), local(event), Math.min(2, Math.max(0.5, factor))));
  };
  node.addEventListener('pointerdown', down);
  node.addEventListener('pointermove', move);
  node.addEventListener('pointerup', up);
  node.addEventListener('pointercancel', up);
  node.addEventListener('wheel', wheel, { passive: false });
  return () => {
    node.removeEventListener('pointerdown', down);
    node.removeEventListener('pointermove', move);
    node.removeEventListener('pointerup', up);
    node.removeEventListener('pointercancel', up);
    node.removeEventListener('wheel', wheel);
  };
}
