import { pounds, type Pounds } from '../../base/quantity.ts';
import { printWeight } from '../../units/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type ShopBrief } from '../types.ts';
import { type Filler } from './filler.ts';

/** How the shop welds, and what its panels are carried on and lifted by. */
export function resolveWelding(shop: NonNullable<ProjectFile['shop']>, filler: Filler): Pick<ShopBrief, 'welds' | 'truck' | 'handLift'> {
  const { welds, truck, handLift } = DEFAULTS.shop;
  const weight = (path: string, given: Pounds | undefined, fallback: number): Pounds => {
    if (given === undefined) filler.note(path, printWeight(pounds(fallback), filler.units));
    return given ?? pounds(fallback);
  };
  return {
    welds: {
      fillet: filler.length('shop.welds.fillet', shop.welds?.fillet, welds.fillet),
      skinLength: filler.length('shop.welds.skinLength', shop.welds?.skinLength, welds.skinLength),
      skinPitch: filler.length('shop.welds.skinPitch', shop.welds?.skinPitch, welds.skinPitch),
      efficiency: filler.number('shop.welds.efficiency', shop.welds?.efficiency, welds.efficiency),
    },
    truck: {
      length: filler.length('shop.truck.length', shop.truck?.length, truck.length),
      width: filler.length('shop.truck.width', shop.truck?.width, truck.width),
      load: weight('shop.truck.load', shop.truck?.load, truck.load),
    },
    handLift: weight('shop.handLift', shop.handLift, handLift),
  };
}
