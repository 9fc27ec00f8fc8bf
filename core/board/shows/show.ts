/** What of the design the live plan shows: each contributor gives its shapes, sizes and words, the drafting step places them. */
import { type Vec } from '../../base/points.ts';
import { type CalloutSpec, type DimensionSpec, type Shape } from '../../drafting/model.ts';
import { type DrawInput } from '../../drawings/index.ts';
import { type BoardOptions } from '../types.ts';

/** A size, with the field of the project file that it is of; null: of none alone. */
export interface SizeShown {
  readonly path: string | null;
  readonly spec: DimensionSpec;
}

export interface Show {
  readonly steel: readonly Shape[];
  /** Lines that no text may touch. */
  readonly lines: readonly Shape[];
  readonly sizes: readonly SizeShown[];
  readonly words: readonly CalloutSpec[];
}

/** What a contributor is given. */
export interface Scene {
  readonly input: DrawInput;
  readonly options: BoardOptions;
  /** Height of a letter, screen inches. */
  readonly h: number;
  /** Points that hold the box of all steel, plan inches, and the middle of that box. */
  readonly extremes: readonly Vec[];
  readonly middle: Vec;
}

export type Contributor = (scene: Scene) => Partial<Show>;
