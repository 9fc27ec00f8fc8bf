/** What is wrong with a dimension: its value against its own witness points, its text against its value. */
import { inches, radians } from '../../core/base/quantity.ts';
import { type Dimension, type Sheet } from '../../core/drafting/primitives.ts';
import { parseLength, printAngle, printLength } from '../../core/units/index.ts';
import { type Point } from './paper-shapes.ts';

const apart = (a: Point, b: Point): number => Math.hypot(b.x - a.x, b.y - a.y);
const TURN = 2 * Math.PI;

/** Counter-clockwise from one side to the other; a whole turn where they are one and the value says so. */
function turned(item: Dimension, center: Point, value: number): number {
  const bearing = (p: Point): number => Math.atan2(p.y - center.y, p.x - center.x);
  const turn = (((bearing(item.to) - bearing(item.from)) % TURN) + TURN) % TURN;
  if (turn > TURN - 1e-7) return value > 1 ? turn : turn - TURN;
  return turn < 1e-7 && value > 1 ? turn + TURN : turn;
}

/** Steel inches (radians for an angle) between the witness points, or null where the dimension has no such points. */
function measured(item: Dimension, scale: number): number | null {
  const { from, to, center, rotation } = item;
  switch (item.measure) {
    case 'linear': return ((to.x - from.x) * Math.cos(rotation) + (to.y - from.y) * Math.sin(rotation)) / scale;
    case 'aligned':
    case 'radius':
    case 'diameter': return apart(from, to) / scale;
    case 'angle': return center === null ? null : turned(item, center, item.value);
    case 'arc': {
      if (center === null) return null;
      const radius = apart(center, from);
      if (Math.abs(apart(center, to) - radius) > 1e-6 * radius) return null;
      return (radius * turned(item, center, (item.value * scale) / radius)) / scale;
    }
  }
}

/** Whether `text` bears the figure by itself, not as the tail or head of a longer one. */
function bears(text: string, figure: string): boolean {
  const plain = figure.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');
  return new RegExp(`(?<![\\d'"./-])(?<!\\d )${plain}(?![\\d.'"/])`).test(text);
}

function figures(item: Dimension, units: Sheet['units']): string[] {
  if (item.measure === 'angle') return [printAngle(radians(item.value))];
  return [printLength(inches(item.value), units, 'feet', false), printLength(inches(item.value), units, 'bracket', false)];
}

export function dimensionBreaches(sheet: Sheet, item: Dimension): string[] {
  const name = `dimension "${item.text}" (${item.measure})`;
  const view = sheet.views.find((one) => one.id === item.view);
  if (view === undefined) return [`${name} stands in no view: ${item.view}`];
  const out: string[] = [];
  const found = measured(item, view.scale);
  if (found === null || !(Math.abs(found - item.value) <= 1e-6 * Math.max(Math.abs(item.value), 1e-3))) {
    out.push(`${name} has the value ${String(item.value)}, its witness points measure ${String(found)}`);
  }
  if (!item.strokes.some((stroke) => stroke.kind === 'text' && stroke.text === item.text)) out.push(`${name} does not print its text`);
  if (!item.chained) {
    if (!figures(item, sheet.units).some((figure) => bears(item.text, figure))) out.push(`${name} does not print its value ${String(item.value)}`);
    return out;
  }
  // A chain's member may differ from its measure by what rounding two figures can make: one step of the tape.
  const read = sheet.units === 'in' ? parseLength(item.text) : Number(item.text) / 25.4;
  const step = sheet.units === 'in' ? 1 / 16 : 1 / 25.4;
  if (read === null || !(Math.abs(read - item.value) <= step + 1e-6)) out.push(`${name}, in a chain, is farther than one step from ${String(item.value)}`);
  return out;
}
