/** Areas and volumes of floors in words: feet and yards, or meters. */
import { MM_PER_INCH } from '../../base/quantity.ts';
import { type Brief } from '../../brief/types.ts';
import { say } from '../../text/index.ts';

/** Square inches; `more` decimals of a square foot. */
export const areaFigure = ({ units }: Brief, area: number, more = 0): string => (units === 'mm'
  ? say('drawings.yard.m2', { value: ((area * MM_PER_INCH ** 2) / 1e6).toFixed(1) })
  : say('drawings.yard.ft2', { value: (area / 144).toFixed(more) }));

/** Cubic inches. */
export const volumeFigure = ({ units }: Brief, volume: number): string => (units === 'mm'
  ? say('drawings.yard.m3', { value: ((volume * MM_PER_INCH ** 3) / 1e9).toFixed(2) })
  : say('drawings.yard.yd3', { value: (volume / 36 ** 3).toFixed(2) }));
