import { inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Brief, type Fault } from '../../brief/types.ts';
import { printLength } from '../../units/index.ts';
import { type FenceLine } from '../fence-line.ts';
import { openingSpots, type Spot } from '../openings/spots.ts';
import { type Ramp } from '../types.ts';
import { dockEnds } from './ramp-fences.ts';

/**
 * Openings of the ramps. Only a level dock takes one: a leaf that hangs plumb in a sloping fence would strike the floor as it opens. One
 * whose middle lies on the slope is a fault that says where the dock is.
 */
export function dockSpots(brief: Brief, ramps: readonly Ramp[], lines: readonly { readonly ramp: Ramp; readonly line: FenceLine }[]): { readonly spots: readonly Spot[]; readonly faults: readonly Fault[] } {
  const own = brief.openings.filter(({ run }) => ramps.some(({ name }) => name === run));
  const { spots, faults } = openingSpots(brief, own, ramps.map(({ run }) => run), lines.map(({ line }) => line));
  const print = (length: number): string => printLength(inches(length), brief.units);
  const sloped = spots.flatMap(({ opening, places }): readonly Fault[] => {
    const ramp = ramps.find(({ name }) => name === opening.run)!;
    const ends = dockEnds(ramp);
    const path = `${opening.path}.at`;
    if (ends === null) return [{ path, code: 'fault.opening-no-dock', params: { run: ramp.name, field: `${ramp.brief.path}.dockLength` } }];
    const u = places[0]!.u;
    const [from, to] = [ends.start.post, ends.end.post];
    if (u >= from - SAME_LENGTH && u <= to + SAME_LENGTH) return [];
    return [{ path, code: 'fault.opening-slope', params: { at: print(opening.at), run: ramp.name, from: print(from), to: print(to) } }];
  });
  const told = [...faults, ...sloped];
  return { spots: told.length > 0 ? [] : spots, faults: told };
}
