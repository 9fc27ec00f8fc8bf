/** Where a drawing is looked at and how near: the part of the paper that fills its pane. */

export interface Gaze {
  /** 1: the whole paper in the pane. */
  readonly zoom: number;
  /** Paper inches, y down, in the middle of the pane. */
  readonly x: number;
  readonly y: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

export const FARTHEST = 1;
export const NEAREST = 24;
/** Of one press of larger or smaller. */
export const ZOOM_STEP = 1.25;
/** Pixels of CSS in an inch of paper at its own size. */
const PIXELS = 96;

export const wholePaper = (paper: Size): Gaze => ({ zoom: 1, x: paper.width / 2, y: paper.height / 2 });

/** Pixels for an inch of paper when the whole of it is in the pane. */
const pixelsWhole = (paper: Size, pane: Size): number => Math.min(pane.width / paper.width, pane.height / paper.height);

/** Pixels for an inch of paper. */
export const pixelsPerInch = (gaze: Gaze, paper: Size, pane: Size): number => pixelsWhole(paper, pane) * gaze.zoom;

/** Nearer or farther by `factor`, the point `about` (paper inches) staying where it is in the pane; never past the paper's middle half. */
export function zoomed(gaze: Gaze, factor: number, paper: Size, about: { readonly x: number; readonly y: number } = gaze): Gaze {
  const zoom = Math.min(NEAREST, Math.max(FARTHEST, gaze.zoom * factor));
  const kept = gaze.zoom / zoom;
  return within({ zoom, x: about.x + (gaze.x - about.x) * kept, y: about.y + (gaze.y - about.y) * kept }, paper);
}

export const moved = (gaze: Gaze, dx: number, dy: number, paper: Size): Gaze => within({ ...gaze, x: gaze.x + dx, y: gaze.y + dy }, paper);

/** As large as it is printed: an inch of paper is 96 pixels. */
export const fullSize = (gaze: Gaze, paper: Size, pane: Size): Gaze => zoomed(gaze, PIXELS / pixelsPerInch(gaze, paper, pane), paper);

/** So that a point is in sight, moved no more than it needs. */
export function inSight(gaze: Gaze, point: { readonly x: number; readonly y: number }, paper: Size): Gaze {
  const half = { x: (0.45 * paper.width) / gaze.zoom, y: (0.45 * paper.height) / gaze.zoom };
  const into = (at: number, middle: number, reach: number): number => Math.min(Math.max(middle, at - reach), at + reach);
  return within({ ...gaze, x: into(point.x, gaze.x, half.x), y: into(point.y, gaze.y, half.y) }, paper);
}

/** The paper can't be lost: its edge comes no farther in than the pane's middle, and the whole of it stands still. */
function within(gaze: Gaze, paper: Size): Gaze {
  if (gaze.zoom <= FARTHEST) return { ...wholePaper(paper), zoom: gaze.zoom };
  return { ...gaze, x: Math.min(Math.max(gaze.x, 0), paper.width), y: Math.min(Math.max(gaze.y, 0), paper.height) };
}

/** The `viewBox` for it. */
export function viewBoxOf(gaze: Gaze, paper: Size): string {
  const width = paper.width / gaze.zoom;
  const height = paper.height / gaze.zoom;
  return [gaze.x - width / 2, gaze.y - height / 2, width, height].map((value) => String(Number(value.toFixed(6)))).join(' ');
}
