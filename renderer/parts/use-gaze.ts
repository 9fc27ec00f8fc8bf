import { type PointerEvent, type RefObject, useEffect, useRef, useState } from 'react';
import { type Gaze, inSight, moved, pixelsPerInch, type Size, wholePaper, zoomed, ZOOM_STEP } from './sheet-gaze.ts';

/** How far a pointer moves before it drags rather than presses, pixels. */
const SLACK = 4;
/** Of the pane's width, for one press of an arrow. */
const STEP = 0.1;

export interface GazeHandle {
  readonly gaze: Gaze;
  set(change: (gaze: Gaze, paper: Size, pane: Size) => Gaze): void;
  /** Moves a point of the paper into sight. */
  show(point: { readonly x: number; readonly y: number }): void;
  /** Answers a key; false where it means nothing here. */
  key(name: string): boolean;
  readonly pointer: {
    onPointerDown(event: PointerEvent<SVGSVGElement>): void;
    onPointerMove(event: PointerEvent<SVGSVGElement>): void;
    onPointerUp(event: PointerEvent<SVGSVGElement>): void;
  };
}

/** Looking at a paper in a pane: wheel, dragging, and keys. `paper` of another size begins anew. */
export function useGaze(paper: Size, pane: RefObject<SVGSVGElement | null>): GazeHandle {
  const [held, setHeld] = useState<{ readonly of: string; readonly gaze: Gaze }>({ of: '', gaze: wholePaper(paper) });
  const of = `${String(paper.width)} ${String(paper.height)}`;
  const gaze = held.of === of ? held.gaze : wholePaper(paper);
  const drag = useRef<{ x: number; y: number; readonly id: number; moving: boolean } | null>(null);

  const set: GazeHandle['set'] = (change) => {
    const box = pane.current?.getBoundingClientRect();
    const size = box === undefined || box.width === 0 ? paper : { width: box.width, height: box.height };
    setHeld((now) => ({ of, gaze: change(now.of === of ? now.gaze : wholePaper(paper), paper, size) }));
  };

  useEffect(() => {
    const element = pane.current;
    if (element === null) return undefined;
    // Not by React's own listener, which may not keep the page from scrolling.
    const turn = (event: WheelEvent): void => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      const size = { width: box.width, height: box.height };
      setHeld((now) => {
        const from = now.of === of ? now.gaze : wholePaper(paper);
        const scale = pixelsPerInch(from, paper, size);
        const about = { x: from.x + (event.clientX - box.x - box.width / 2) / scale, y: from.y + (event.clientY - box.y - box.height / 2) / scale };
        return { of, gaze: zoomed(from, ZOOM_STEP ** (-event.deltaY / 100), paper, about) };
      });
    };
    element.addEventListener('wheel', turn, { passive: false });
    return () => { element.removeEventListener('wheel', turn); };
  }, [pane, paper, of]);

  return {
    gaze, set,
    show: (point) => { set((now) => inSight(now, point, paper)); },
    key: (name) => {
      const change = keyChange(name);
      if (change !== null) set(change);
      return change !== null;
    },
    pointer: {
      onPointerDown: (event) => {
        if (event.button === 0) drag.current = { x: event.clientX, y: event.clientY, id: event.pointerId, moving: false };
      },
      onPointerMove: (event) => {
        const held = drag.current;
        if (held?.id !== event.pointerId) return;
        const dx = event.clientX - held.x;
        const dy = event.clientY - held.y;
        if (!held.moving && Math.hypot(dx, dy) < SLACK) return;
        if (!held.moving) event.currentTarget.setPointerCapture(event.pointerId);
        drag.current = { ...held, x: event.clientX, y: event.clientY, moving: true };
        set((now, of, size) => {
          const scale = pixelsPerInch(now, of, size);
          return moved(now, -dx / scale, -dy / scale, of);
        });
      },
      onPointerUp: () => { drag.current = null; },
    },
  };
}

function keyChange(name: string): Parameters<GazeHandle['set']>[0] | null {
  const step = (dx: number, dy: number) => (gaze: Gaze, paper: Size): Gaze => moved(gaze, (dx * STEP * paper.width) / gaze.zoom, (dy * STEP * paper.height) / gaze.zoom, paper);
  switch (name) {
    case '+':
    case '=': return (gaze, paper) => zoomed(gaze, ZOOM_STEP, paper);
    case '-': return (gaze, paper) => zoomed(gaze, 1 / ZOOM_STEP, paper);
    case '0': return (_, paper) => wholePaper(paper);
    case 'ArrowLeft': return step(-1, 0);
    case 'ArrowRight': return step(1, 0);
    case 'ArrowUp': return step(0, -1);
    case 'ArrowDown': return step(0, 1);
    default: return null;
  }
}
