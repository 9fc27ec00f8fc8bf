import { inches, type Inches } from '../../base/quantity.ts';
import { type Ramp } from '../types.ts';

/** From the low end, level, at `u` along the walk; and the other way about: cattle walk up a loading ramp and down an unloading one. */
export const fromLowEnd = ({ brief, length }: Pick<Ramp, 'brief' | 'length'>, u: number): Inches =>
  inches(brief.kind === 'load' ? u : length - u);
