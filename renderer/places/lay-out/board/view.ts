/** Where the board is looked at from. All figures are pixels of CSS on the screen and inches in the plan. */
import { planPoint, type PlanPoint, type Vec } from '../../../../core/base/points.ts';

/** Pixels of CSS in an inch of the screen, by definition (CSS Values and Units 4, absolute lengths). */
export const PX = 96;

export interface View {
  /** Inches of the screen for an inch of the plan, as the picture's. */
  readonly scale: number;
  /** What stands in the middle of the board. */
  readonly middle: PlanPoint;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** From a post filling the board to the longest facility that a project may have across it: 2000 bays of 144 in (project format) are 24,000 ft. */
export const LEAST_SCALE = 0.00003;
export const GREATEST_SCALE = 1.2;

const held = (scale: number): number => Math.min(GREATEST_SCALE, Math.max(LEAST_SCALE, scale));

/** A place in the plan on the screen, from the board's upper left corner. */
export function toScreen(view: View, size: Size, at: Vec): Vec {
  const k = view.scale * PX;
  return { x: size.width / 2 + (at.x - view.middle.x) * k, y: size.height / 2 - (at.y - view.middle.y) * k };
}

export function toPlan(view: View, size: Size, at: Vec): PlanPoint {
  const k = view.scale * PX;
  return planPoint(view.middle.x + (at.x - size.width / 2) / k, view.middle.y - (at.y - size.height / 2) / k);
}

/** Closer by `factor` (farther below 1); what lies under `at` on the screen stays there. */
export function zoomAbout(view: View, size: Size, at: Vec, factor: number): View {
  const scale = held(view.scale * factor);
  const under = toPlan(view, size, at);
  const share = view.scale / scale;
  return {
    scale,
    middle: planPoint(under.x + (view.middle.x - under.x) * share, under.y + (view.middle.y - under.y) * share),
  };
}

/** The sheet moved under the eye by so many pixels. */
export function panBy(view: View, dx: number, dy: number): View {
  const k = view.scale * PX;
  return { ...view, middle: planPoint(view.middle.x - dx / k, view.middle.y + dy / k) };
}

export interface PlanBox {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

/** Clear edges, pixels: room for what is written beside the steel. */
export interface Edges {
  readonly left: number;
  readonly right: number;
  readonly low: number;
  readonly high: number;
}

export const evenEdges = (clear: number): Edges => ({ left: clear, right: clear, low: clear, high: clear });

/** The whole of a box with clear edges around it. */
export function fitView(box: PlanBox, size: Size, edges: Edges): View {
  const wide = Math.max(box.right - box.left, 1);
  const tall = Math.max(box.high - box.low, 1);
  // On a board smaller than its clear edges the plan still has half of it.
  const room = {
    x: Math.max(size.width - edges.left - edges.right, size.width / 2, 1),
    y: Math.max(size.height - edges.low - edges.high, size.height / 2, 1),
  };
  const scale = held(Math.min(room.x / wide, room.y / tall) / PX);
  const k = scale * PX;
  return {
    scale,
    middle: planPoint((box.left + box.right) / 2 + (edges.right - edges.left) / 2 / k, (box.low + box.high) / 2 + (edges.high - edges.low) / 2 / k),
  };
}
