/** Figures between the board and the project file: the steps of a hand, and how a figure is printed and written. */
import { type Handle } from '../../../core/board/types.ts';
import { inches, MM_PER_INCH, radians, toDegrees } from '../../../core/base/quantity.ts';
import { parseFigure, parseLength, printAngle, printLength, roundLength } from '../../../core/units/index.ts';
import { type Units } from '../../worker/protocol.ts';

type Figure = Handle['figure'];

/** What a drag and an arrow key move by: an inch, 10 mm or a degree, in inches or radians. */
export function wholeStep(figure: Figure, units: Units): number {
  if (figure === 'angle') return Math.PI / 180;
  return units === 'in' ? 1 : 10 / MM_PER_INCH;
}

/** A figure (inches or radians) as a person reads it. */
export const printFigure = (figure: Figure, value: number, units: Units): string =>
  figure === 'angle' ? printAngle(radians(value), 1) : printLength(inches(value), units);

/** A figure as the project file holds it: inches to the sixteenth, whole millimeters as a text, degrees to the tenth. */
export function writtenFigure(figure: Figure, value: number, units: Units): number | string {
  if (figure === 'angle') return Math.round(toDegrees(radians(value)) * 10) / 10;
  return writtenLength(value, units);
}

export function writtenLength(value: number, units: Units): number | string {
  const rounded = roundLength(inches(value), units);
  return units === 'in' ? rounded : `${String(Math.round(rounded * MM_PER_INCH))} mm`;
}

/** The figure `steps` whole steps on from `value`, on a whole step, within what the field may be. */
export function stepped({ figure, least, greatest }: Pick<Handle, 'figure' | 'least' | 'greatest'>, value: number, steps: number, units: Units): number {
  const step = wholeStep(figure, units);
  const at = value / step;
  // From between two steps the first goes to the next one that way; a figure on a step may be off it by rounding.
  const base = steps > 0 ? Math.floor(at + 1e-6) : Math.ceil(at - 1e-6);
  return Math.min(greatest, Math.max(least, (base + steps) * step));
}

/** What a person typed, in inches or radians; a plain number is in the project's units. null: no such figure. */
export function typedFigure(figure: Figure, text: string, units: Units): number | null {
  const plain = text.trim().replace(/(°| ?deg(rees?)?)$/i, '');
  if (figure === 'angle') {
    const degrees = parseFigure(plain);
    return degrees === null ? null : (degrees * Math.PI) / 180;
  }
  const bare = units === 'mm' && /^[\d.]+$/.test(text.trim());
  return parseLength(bare ? `${text.trim()} mm` : text);
}
