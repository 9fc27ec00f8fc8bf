import { inches } from '../../../../core/base/quantity.ts';
import { distance, type Vec } from '../../../../core/base/points.ts';
import { printLength } from '../../../../core/units/index.ts';
import { type Units } from '../../../worker/protocol.ts';

/** A distance in the plan as the project's units print it, straight and along the plan's x and y. */
export interface Measured {
  readonly straight: string;
  readonly across: string;
  readonly up: string;
}

export function measured(from: Vec, to: Vec, units: Units): Measured {
  const print = (value: number): string => printLength(inches(value), units);
  return { straight: print(distance(from, to)), across: print(to.x - from.x), up: print(to.y - from.y) };
}
