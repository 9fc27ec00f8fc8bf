/** Points in three frames that must never be mixed: the plan, a view of a drawing, and the paper. */

declare const frame: unique symbol;

export interface Vec {
  readonly x: number;
  readonly y: number;
}
/** Plan inches: the pivot post's center is the origin, x right, y up, seen from above. */
export type PlanPoint = Vec & { readonly [frame]: 'plan' };
/** True inches of steel in one view of a drawing, x right, y up. */
export type ViewPoint = Vec & { readonly [frame]: 'view' };
/** Inches on the paper, from its lower left corner, x right, y up. */
export type SheetPoint = Vec & { readonly [frame]: 'sheet' };

export const planPoint = (x: number, y: number): PlanPoint => ({ x, y }) as PlanPoint;
export const viewPoint = (x: number, y: number): ViewPoint => ({ x, y }) as ViewPoint;
export const sheetPoint = (x: number, y: number): SheetPoint => ({ x, y }) as SheetPoint;

export const add = (a: Vec, b: Vec): Vec => ({ x: a.x + b.x, y: a.y + b.y });
export const sub = (a: Vec, b: Vec): Vec => ({ x: a.x - b.x, y: a.y - b.y });
export const scale = (a: Vec, k: number): Vec => ({ x: a.x * k, y: a.y * k });
export const dot = (a: Vec, b: Vec): number => a.x * b.x + a.y * b.y;
/** z of the cross product: positive where b lies counter-clockwise of a. */
export const cross = (a: Vec, b: Vec): number => a.x * b.y - a.y * b.x;
export const length = (a: Vec): number => Math.hypot(a.x, a.y);
export const distance = (a: Vec, b: Vec): number => Math.hypot(b.x - a.x, b.y - a.y);
/** Unit vector at an angle, counter-clockwise from +x. */
export const unitAt = (angle: number): Vec => ({ x: Math.cos(angle), y: Math.sin(angle) });
/** A quarter turn counter-clockwise: the left of a heading. */
export const leftOf = (a: Vec): Vec => ({ x: -a.y, y: a.x });
export const angleOf = (a: Vec): number => Math.atan2(a.y, a.x);
