import { type Pounds } from '../base/quantity.ts';
import { KG_PER_POUND } from './parse-weight.ts';
import { type LengthUnits } from './round-length.ts';

/** A weight as a drawing bears it: one decimal under 100, whole above; pounds, or kilograms in a metric project. Throws on what is not finite. */
export function printWeight(weight: Pounds, units: LengthUnits): string {
  if (!Number.isFinite(weight)) throw new Error(`not a weight: ${String(weight)}`);
  const figure = units === 'in' ? weight : weight * KG_PER_POUND;
  const text = Math.abs(figure) < 99.95 ? figure.toFixed(1) : figure.toFixed(0);
  return `${text.replace(/^-(0\.0|0)$/, '$1')} ${units === 'in' ? 'lb' : 'kg'}`;
}
