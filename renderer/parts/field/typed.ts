/** Between what a person types in a field and the value that the file holds. What is typed is kept as it is typed. */
import { type What } from '../../../core/brief/format/index.ts';
import { type Json } from '../../../core/brief/json/types.ts';
import { type Units } from '../../worker/protocol.ts';

const FIGURES: readonly What['kind'][] = ['length', 'angle', 'weight', 'number', 'whole', 'soil'];

/** Whether a field holds a figure: what can be read as a plain number is one in the file. */
export const isFigure = (what: What): boolean => FIGURES.includes(what.kind);

/** What a plain number means to a person whose project is metric; in the file a plain length is inches, a plain weight pounds. */
const METRIC: Partial<Record<What['kind'], string>> = { length: 'mm', weight: 'kg' };

/**
 * The value of the file for a text in a field; a text that is no plain number stays a text, and the door says whether it can be read.
 * In a metric project a plain length or weight gets its unit.
 */
export function valueOf(what: What, text: string, units: Units): Json {
  const trimmed = text.trim();
  if (!isFigure(what) || !/^-?(\d+\.?\d*|\.\d+)$/.test(trimmed)) return text;
  const unit = units === 'mm' ? METRIC[what.kind] : undefined;
  if (unit !== undefined) return `${trimmed} ${unit}`;
  const value = Number(trimmed);
  // A figure too large for a number would be lost in the file.
  return Number.isFinite(value) ? value + 0 : text;
}

/** The text of a value in its field, a value of another kind as the file has it. */
export function textOf(value: Json | undefined): string {
  if (value === undefined || value === null) return '';
  return typeof value === 'string' ? value : JSON.stringify(value);
}
