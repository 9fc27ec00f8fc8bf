import { degrees, type Inches, type Pounds, type Radians } from '../../base/quantity.ts';
import { say } from '../../text/index.ts';
import { parseLength, parseWeight } from '../../units/index.ts';
import { allowedRange } from '../allowed.ts';
import { type Range } from '../ranges.ts';
import { fault, leaf, type Verdict } from './leaf.ts';

const isFigure = (value: unknown): value is string | number => typeof value === 'number' || typeof value === 'string';

function within<T extends number>(value: T, { least, greatest }: Range, words: string): Verdict<T> {
  return value >= least && value <= greatest ? { value } : fault('fault.range', { allowed: words });
}

type Measured = 'length' | 'angle' | 'weight' | 'number';

function measured<T extends number>(kind: Measured, range: Range, parse: (value: string | number) => T | null) {
  const allowed = (): string => say(`allowed.${kind}`, { range: allowedRange(range) });
  return leaf<T>({ kind, range }, allowed, (value) => {
    const figure = isFigure(value) ? parse(value) : null;
    return figure === null ? fault('fault.type', { allowed: allowed() }) : within(figure, range, allowedRange(range));
  });
}

const asNumber = (value: string | number): number | null => (typeof value === 'number' && Number.isFinite(value) ? value : null);

/** A length, inches. */
export const length = (range: Range) => measured<Inches>('length', range, parseLength);
/** A weight, pounds. */
export const weight = (range: Range) => measured<Pounds>('weight', range, parseWeight);
/** A plain number. */
export const number = (range: Range) => measured<number>('number', range, asNumber);
/** An angle that stays in degrees: a latitude, a longitude. */
export const degree = (range: Range) => measured<number>('angle', range, asNumber);

/** An angle, degrees in the file and radians behind the door; the range is held in degrees. */
export const angle = (range: Range) => degree(range).transform((value): Radians => degrees(value));

/** A whole number. */
export function whole(range: Range) {
  const allowed = (): string => say('allowed.whole', { range: allowedRange(range) });
  return leaf<number>({ kind: 'whole', range }, allowed, (value) => {
    const figure = isFigure(value) ? asNumber(value) : null;
    if (figure === null) return fault('fault.type', { allowed: allowed() });
    return Number.isInteger(figure) ? within(figure, range, allowedRange(range)) : fault('fault.whole', { allowed: allowed() });
  });
}

/** A kind of soil by name, or what it bears, psf a foot. */
export function soil(range: Range) {
  const allowed = (): string => say('allowed.soil', { range: allowedRange(range) });
  return leaf<'clay' | 'sand' | 'gravel' | number>({ kind: 'soil', choices: ['clay', 'sand', 'gravel'], range }, allowed, (value) => {
    if (value === 'clay' || value === 'sand' || value === 'gravel') return { value };
    if (typeof value === 'string') return fault('fault.choice', { allowed: allowed() });
    return typeof value === 'number' ? within(value, range, allowed()) : fault('fault.type', { allowed: allowed() });
  });
}
