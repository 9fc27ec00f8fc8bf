import { planPoint, type PlanPoint } from '../../../../core/base/points.ts';
import { draggedValue, type Handle } from '../../../../core/board/index.ts';
import { say } from '../../../../core/text/index.ts';
import { printFigure, wholeStep, writtenFigure } from '../figures.ts';
import { type FigureTag } from './figure-tag.ts';
import { planUnder, type Scene } from './scene.ts';

/** A hand that shakes by less, in pixels, has not begun to drag. */
const BEGINS = 3;

interface Held {
  readonly handle: Handle;
  readonly pointer: number;
  readonly from: { readonly x: number; readonly y: number };
  /** From the place under the pointer to the handle's own, so that it does not jump into the hand. */
  readonly grip: { readonly x: number; readonly y: number };
  readonly gesture: string;
  near: number;
  value: number;
  moving: boolean;
}

/** Lets a pointer drag a handle. One drag is one gesture; Escape gives it up. Returns what lets go of the listeners. */
export function handleDrag(scene: Scene, node: SVGElement, now: () => Handle, tag: FigureTag): () => void {
  const { desk, state } = scene;
  let held: Held | null = null;
  let drags = 0;

  const end = (): void => {
    if (held === null) return;
    const { moving, pointer } = held;
    held = null;
    if (node.hasPointerCapture(pointer)) node.releasePointerCapture(pointer);
    if (!moving) return;
    tag.hide();
    state.dragged.set(null);
    node.classList.remove('handle-moving');
  };
  const down = (event: PointerEvent): void => {
    if (event.button !== 0 || state.measuring.get() !== null) return;
    event.stopPropagation();
    const handle = now();
    const under = planUnder(scene, event);
    if (under === null) return;
    drags += 1;
    node.setPointerCapture(event.pointerId);
    held = {
      handle, pointer: event.pointerId, from: { x: event.clientX, y: event.clientY }, grip: { x: handle.at.x - under.x, y: handle.at.y - under.y },
      gesture: `drag ${handle.id} ${String(drags)} ${event.timeStamp.toFixed(0)}`, near: handle.value, value: handle.value, moving: false,
    };
    desk.select({ run: handle.run, field: handle.path, mark: null, finding: null });
  };
  const move = (event: PointerEvent): void => {
    if (held === null || event.pointerId !== held.pointer) return;
    if (!held.moving) {
      if (Math.hypot(event.clientX - held.from.x, event.clientY - held.from.y) < BEGINS) return;
      held.moving = true;
      state.dragged.set(held.handle.path);
      node.classList.add('handle-moving');
    }
    const under = planUnder(scene, event);
    const units = desk.worked.get().laid?.units;
    if (under === null || units === undefined) return;
    const { handle, grip } = held;
    const free = event.shiftKey || event.altKey;
    const place: PlanPoint = planPoint(under.x + grip.x, under.y + grip.y);
    held.near = draggedValue(handle, place, held.near, null);
    const value = free ? held.near : draggedValue(handle, place, held.near, wholeStep(handle.figure, units));
    const edge = scene.corner();
    tag.show(printFigure(handle.figure, value, units), event.clientX - edge.x + 22, event.clientY - edge.y - 44);
    if (value === held.value) return;
    held.value = value;
    desk.session.setField(handle.path, writtenFigure(handle.figure, value, units), { label: say('place-lay-out.drag', { label: handle.label }), gesture: held.gesture });
  };
  const up = (event: PointerEvent): void => {
    if (event.pointerId !== held?.pointer) return;
    if (held.moving) desk.session.settle();
    end();
  };
  const giveUp = (): void => {
    if (held?.moving === true) desk.session.giveUp(held.gesture);
    end();
  };
  const key = (event: KeyboardEvent): void => {
    if (event.key !== 'Escape' || held === null) return;
    event.preventDefault();
    event.stopPropagation();
    giveUp();
  };
  node.addEventListener('pointerdown', down);
  node.addEventListener('pointermove', move);
  node.addEventListener('pointerup', up);
  node.addEventListener('pointercancel', giveUp);
  // A drag begun by a finger leaves the focus elsewhere: Escape is heard wherever it is.
  window.addEventListener('keydown', key, true);
  return () => {
    giveUp();
    node.removeEventListener('pointerdown', down);
    node.removeEventListener('pointermove', move);
    node.removeEventListener('pointerup', up);
    node.removeEventListener('pointercancel', giveUp);
    window.removeEventListener('keydown', key, true);
  };
}
