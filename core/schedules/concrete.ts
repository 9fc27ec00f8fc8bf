import { MM_PER_INCH, pounds } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { floorSlabs, RAMP_PRACTICE, rampConcrete } from '../parts/index.ts';
import { type MaterialRow } from './materials.ts';

/** Concrete of the floors and of each stepped ramp as it is ordered, cubic yards or cubic meters, cast solid; the weight from memory (150 lb a cubic foot). */
export function concreteRows(brief: Brief, layout: Layout): readonly MaterialRow[] {
  const metric = brief.units === 'mm';
  const perInch = metric ? MM_PER_INCH / 1000 : 1 / 36;
  const row = (section: string, volume: number): MaterialRow => ({
    item: 'concrete', section, quantity: volume * perInch ** 3, unit: metric ? 'm3' : 'yd3',
    weight: pounds(volume * RAMP_PRACTICE.concreteDensity), price: null, pieces: 1,
  });
  return [
    ...floorSlabs(brief, layout).map(({ run, volume }) => row(run, volume)),
    ...layout.ramps.flatMap((ramp) => {
      const concrete = rampConcrete(ramp);
      return concrete === null ? [] : [row(ramp.name, concrete.volume)];
    }),
  ];
}
