import { MM_PER_INCH, pounds } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { type Layout } from '../layout/index.ts';
import { RAMP_PRACTICE, rampConcrete } from '../parts/index.ts';
import { type MaterialRow } from './materials.ts';

/** Concrete of each stepped ramp as it is ordered, cubic yards or cubic meters, cast solid; the weight from memory (150 lb a cubic foot). */
export function concreteRows(brief: Brief, layout: Layout): readonly MaterialRow[] {
  const metric = brief.units === 'mm';
  const perInch = metric ? MM_PER_INCH / 1000 : 1 / 36;
  return layout.ramps.flatMap((ramp): readonly MaterialRow[] => {
    const concrete = rampConcrete(ramp);
    if (concrete === null) return [];
    return [{
      item: 'concrete', section: ramp.name, quantity: concrete.volume * perInch ** 3, unit: metric ? 'm3' : 'yd3',
      weight: pounds(concrete.volume * RAMP_PRACTICE.concreteDensity), price: null, pieces: 1,
    }];
  });
}
