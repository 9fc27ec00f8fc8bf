import { printValue } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { say } from '../../../core/text/index.ts';
import { parseSection, parseSheet } from '../../../core/steel/index.ts';
import { pathSteps } from '../../project/json-path.ts';
import { standingWords } from './standing-words.ts';
import { type FieldState } from './use-field.ts';

/** Kinds whose figure is read beside what is typed. */
const READ: readonly string[] = ['length', 'weight', 'angle'];

/** Figures that are a share of a whole, 0.02 for 2 in a hundred: which of the two a person types is not plain by itself. */
const SHARES: readonly string[] = ['floors.fall', 'squeezePad.roof.daylight', 'shop.springback', 'shop.welds.efficiency'];

/** A share in hundredths; null for what is no figure. */
const hundredths = (value: Json | undefined): string | null => (typeof value === 'number' ? say('place-brief.percent', { value: String(Math.round(value * 1e6) / 1e4) }) : null);

/** One bar, one sheet, or the weight of a sheet. */
function pricedEach(section: string, by: string): string {
  if (parseSheet(section) === null) return say('place-brief.price.bar');
  return by === 'lb' || by === 'kg' ? say(`place-brief.price.weight.${by}`) : say('place-brief.price.sheet');
}

/** What a price of this name is the price of: a bar's running length, an area of sheet, a volume; null where the bill counts or the name is not known. */
function pricedBy(name: string, units: 'in' | 'mm'): string | null {
  if (name.includes('=')) return pricedEach(name.slice(0, name.lastIndexOf('=')), name.slice(name.lastIndexOf('=') + 1).trim().toLowerCase());
  if (parseSheet(name) !== null) return say(`place-brief.price.area.${units}`);
  if (parseSection(name) !== null) return say(`place-brief.price.length.${units}`);
  return name === 'concrete' ? say(`place-brief.price.volume.${units}`) : null;
}

/** What was typed, in the project's units; or what holds while nothing is typed. Null where nothing is to be said. */
export function reading(state: FieldState): string | null {
  const { field, path, value, units, standing } = state;
  const share = SHARES.includes(field.pattern);
  if (value === undefined) {
    const words = field.what.kind === 'choice' || field.what.kind === 'flag' ? null : standingWords(state);
    const part = share ? hundredths(standing?.value) : null;
    return words === null || part === null ? words : say('place-brief.share', { words, part });
  }
  if (value === null) return null;
  if (field.pattern === 'shop.prices[*]') return pricedBy(String(pathSteps(path).at(-1)), units);
  const words = share ? hundredths(value) : READ.includes(field.what.kind) ? printValue(field.what, value, units) : null;
  return words === null ? null : say('place-brief.reads', { value: words });
}
