/** Small figures that the details share. */
import { viewPoint } from '../../base/points.ts';
import { type CalloutSpec, type DimensionSpec, type WeldSpec } from '../../drafting/model.ts';
import { type Weld } from '../../schedules/index.ts';
import { say, type StringKey } from '../../text/index.ts';

export type At = readonly [number, number];

/** A size across (x) or up (y), its line on the side of `way` first: above or to the right 1, below or to the left -1. */
export function size(h: number, along: 'x' | 'y', from: At, to: At, way: 1 | -1, required = true): DimensionSpec {
  const side = along === 'x' ? way : -way;
  return {
    measure: 'linear', along, required, decimal: true, from: viewPoint(...from), to: viewPoint(...to),
    offsets: [4, 6, 8, 11, 14, 18, -4, -6, -8, -11, -14, -18].map((reach) => side * reach * h),
  };
}

/** A word on a leader that may be left out where it has no room. */
export const word = (key: StringKey, at: At, toward: At, params: Readonly<Record<string, string>> = {}): CalloutSpec =>
  ({ text: say(key, params), target: viewPoint(...at), piece: null, toward: { x: toward[0], y: toward[1] }, layer: 'NOTES', optional: true });

/** The symbol of a joint's weld with its arrow on the joint. */
export const weldAt = ({ symbol }: Weld, at: At, toward: At, optional = false): WeldSpec =>
  ({ ...symbol, target: viewPoint(...at), toward: { x: toward[0], y: toward[1] }, ...(optional ? { optional: true } : {}) });
