import { degrees } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { parseLength, parseWeight, printAngle, printWeight, type LengthUnits } from '../../units/index.ts';
import { type Json } from '../json/types.ts';
import { printExactly } from '../resolve/print-exactly.ts';
import { type What } from './types.ts';

/** A value of the file as a person reads it in the project's units; null where it can't be read as what the field is. */
export function printValue(what: What, value: Json, units: LengthUnits): string | null {
  if (value === null) return say('term.none');
  const figure = typeof value === 'number' || typeof value === 'string' ? value : null;
  switch (what.kind) {
    case 'length': {
      const length = figure === null ? null : parseLength(figure);
      return length === null ? null : printExactly(length, units);
    }
    case 'weight': {
      const weight = figure === null ? null : parseWeight(figure);
      return weight === null ? null : printWeight(weight, units);
    }
    case 'angle':
      return typeof value === 'number' ? printAngle(degrees(value)) : null;
    case 'number':
    case 'whole':
      return typeof value === 'number' ? String(value) : null;
    case 'flag':
      return typeof value === 'boolean' ? say(value ? 'term.yes' : 'term.no') : null;
    case 'text':
    case 'date':
      return value === '' ? say('term.empty') : figure === null ? null : String(figure);
    default:
      return figure === null ? null : String(figure);
  }
}
