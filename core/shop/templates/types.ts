/** Paper to wrap round a pipe, cut to the line of its cope or mitre. Inches and radians. */
import { type Inches, type Radians } from '../../base/quantity.ts';

/** How the end of a round pipe is cut. `branch` is the pipe's outside radius, `bend` the radius of its axis where it is rolled. */
export type Cope =
  /** To a round header of radius `header`, at 90° less `slope`. */
  | { readonly kind: 'saddle'; readonly branch: Inches; readonly header: Inches; readonly slope: Radians; readonly bend: Inches | null }
  /**
   * By a plane that leans `angle` from square: upright along a fence (`level`, for it turns the fence in the level plane), in the plane of
   * a gate's frame, or across a fence whose slope breaks (`slope`). `long` says on which side of a bend the long point lies.
   */
  | {
      readonly kind: 'mitre'; readonly branch: Inches; readonly angle: Radians; readonly lies: 'level' | 'frame' | 'slope';
      readonly bend: Inches | null; readonly long: 'inside' | 'outside' | null;
    };

/**
 * The cut laid flat. x runs round the pipe from the seam, to the right as it is read with the cut at the top; on a level pipe the seam lies
 * underneath or on top, so that a quarter of the way round is a side, and on a rolled one the inside of the bend.
 */
export interface Wrap {
  /** π times the outside diameter: nothing is added for the paper's thickness. */
  readonly around: Inches;
  /** From the straight edge to the cut, along the pipe. */
  readonly cutAt: (x: number) => number;
  /** The least and greatest of `cutAt`. */
  readonly low: Inches;
  readonly high: Inches;
  /** From the straight edge to where the piece's length in the piece list ends. */
  readonly lengthEnd: Inches;
}

/** A piece mark that a template serves. */
export interface TemplateUse {
  readonly mark: string;
  readonly quantity: number;
  /** How many of each piece's ends. */
  readonly ends: 1 | 2;
  /** Template of the other end, where it is another one; null where that end is cut square, or by this one too. */
  readonly other: string | null;
  /** How far the seams of the piece's two ends are turned from each other; null where the other end is square. */
  readonly turn: 0 | 180 | null;
}

/** One cope, with all that is cut to it. */
export interface Template {
  /** The lowest piece mark that it serves, with a letter where that mark's other end has the name. */
  readonly name: string;
  readonly cope: Cope;
  readonly sections: readonly string[];
  /** By mark. */
  readonly uses: readonly TemplateUse[];
}
