import { type Brief, type Fault } from '../../brief/types.ts';
import { type Fence, type Ramp, type Run } from '../types.ts';
import { catwalkSpots } from './spots.ts';
import { standCatwalk } from './stand.ts';
import { type Catwalk } from './types.ts';

/** The catwalks of a brief beside its fences, in the order of the brief; what cannot be set out is a list of faults. */
export function standCatwalks(brief: Brief, runs: readonly Run[], fences: readonly Fence[], ramps: readonly Ramp[]): { readonly catwalks: readonly Catwalk[]; readonly faults: readonly Fault[] } {
  const { spots, faults } = catwalkSpots(brief, runs, fences);
  const stood = spots.map((spot) => standCatwalk(brief, spot, ramps));
  return {
    catwalks: stood.flatMap((one) => ('catwalk' in one ? [one.catwalk] : [])),
    faults: [...faults, ...stood.flatMap((one) => ('fault' in one ? [one.fault] : []))],
  };
}
