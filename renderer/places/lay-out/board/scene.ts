/** What the parts of the board share, and what each of them does. */
import { type Svg } from '@svgdotjs/svg.js';
import { type PlanPoint, type Vec } from '../../../../core/base/points.ts';
import { type DeskWindow } from '../../../app/desk-window.ts';
import { type BoardState } from './board-state.ts';
import { type Size, toPlan, toScreen, type View } from './view.ts';

export interface Scene {
  readonly desk: DeskWindow;
  readonly state: BoardState;
  readonly svg: Svg;
  size(): Size;
  /** The board's upper left corner in the window, pixels. Asked of the page once, not for each move of a hand: that would lay the page out anew. */
  corner(): Vec;
  /** Where the rings stand on the screen that a hand takes hold of: numbers keep clear of them. */
  rings: readonly Vec[];
}

/** One part of the board. */
export interface Layer {
  /** What was worked out, what is chosen or what is shown has changed. */
  draw(): void;
  /** The sheet was moved or brought closer. */
  place(): void;
  end(): void;
}

export function onScreen({ state, size }: Scene, at: Vec): Vec {
  const view: View | null = state.view.get();
  return view === null ? { x: -1e4, y: -1e4 } : toScreen(view, size(), at);
}

/** The place in the plan under an event of a pointer; null before the board is fitted. */
export function planUnder({ state, size, corner }: Scene, event: { readonly clientX: number; readonly clientY: number }): PlanPoint | null {
  const view = state.view.get();
  if (view === null) return null;
  const { x, y } = corner();
  return toPlan(view, size(), { x: event.clientX - x, y: event.clientY - y });
}
