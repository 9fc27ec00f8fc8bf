import { MM_PER_INCH, pounds } from '../base/quantity.ts';
import { type Brief } from '../brief/types.ts';
import { type Layout, type Post } from '../layout/index.ts';
import { RAMP_PRACTICE } from '../parts/index.ts';
import { say } from '../text/index.ts';
import { type MaterialRow } from './materials.ts';

/** What an 80 lb bag of premixed concrete makes, cubic inches: 0.60 cubic feet (bag makers' tables). */
const BAG = { pounds: 80, volume: 0.6 * 12 ** 3 };

/** Concrete in one post's hole, cubic inches: the hole less the post's outside in it. Nothing is poured into the post. */
export function holeConcrete({ hole, section, length, fenceHeight }: Post): number {
  const outside = section.shape === 'round' ? (Math.PI / 4) * section.across ** 2 : section.across * section.along;
  const stands = Math.max(0, Math.min(hole.depth, length - fenceHeight));
  return Math.max(0, (Math.PI / 4) * hole.diameter ** 2 * hole.depth - outside * stands);
}

/** The concrete of all post holes: by the cubic yard or cubic meter, and what it comes to in premixed bags, which are bought in its place. */
export function postHoleRows(brief: Brief, layout: Layout): readonly MaterialRow[] {
  const metric = brief.units === 'mm';
  const volume = layout.posts.reduce((sum, post) => sum + holeConcrete(post), 0);
  if (volume === 0) return [];
  const perInch = metric ? MM_PER_INCH / 1000 : 1 / 36;
  const bags = Math.ceil(volume / BAG.volume);
  return [
    {
      item: 'concrete', section: say('schedules.postHoles'), quantity: volume * perInch ** 3, unit: metric ? 'm3' : 'yd3',
      weight: pounds(volume * RAMP_PRACTICE.concreteDensity), price: null, pieces: layout.posts.length,
    },
    { item: 'premix', section: say('schedules.premix', { bag: BAG.pounds }), quantity: bags, unit: 'bag', weight: pounds(bags * BAG.pounds), price: null, pieces: bags },
  ];
}
