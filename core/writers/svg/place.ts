/** Figures and points of an SVG: paper inches, y down. */
import { type Vec } from '../../base/points.ts';
import { plainNumber } from '../plain-number.ts';

/** Decimals of a length on paper: a millionth of an inch. */
export const PLACES = 6;

/** A length on paper. */
export const figure = (value: number): string => plainNumber(value, PLACES);

/** A point of the paper, turned over: `x y`. */
export const place = (at: Vec, height: number): string => `${figure(at.x)} ${figure(height - at.y)}`;
