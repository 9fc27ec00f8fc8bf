import { type Vec } from '../../base/points.ts';
import { makeFloor, type Spacer } from './floor.ts';
import { type Mold } from './mold.ts';

/** So many alike parts, in every way that they may be turned. */
export interface Pile {
  readonly molds: readonly Mold[];
  readonly count: number;
}

export interface Laid {
  readonly mold: Mold;
  readonly at: Vec;
}

/** Lays parts on one sheet in the order of the piles, each as far left as it goes, then as low, turned the way that ends first. */
export function fillSheet(long: number, short: number, piles: readonly Pile[], spacer: Spacer): readonly Laid[] {
  const floor = makeFloor(long, short, spacer);
  const laid: Laid[] = [];
  let room = long * short;
  for (const { molds, count } of piles) {
    for (let left = count; left > 0 && molds[0]!.area <= room; left--) {
      const best = bestPlace(molds.flatMap((mold): Laid[] => {
        const at = floor.placeFor(mold);
        return at === null ? [] : [{ mold, at }];
      }));
      if (best === null) break;
      floor.put(best.mold, best.at);
      laid.push(best);
      room -= best.mold.area;
    }
  }
  return laid;
}

function bestPlace(places: readonly Laid[]): Laid | null {
  return places.reduce<Laid | null>((best, one) => (best === null || endsBefore(one, best) ? one : best), null);
}

function endsBefore(a: Laid, b: Laid): boolean {
  const ends = a.at.x + a.mold.width - b.at.x - b.mold.width;
  return ends < 0 || (ends === 0 && a.at.y + a.mold.height < b.at.y + b.mold.height);
}
