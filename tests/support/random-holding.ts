/** Holding pens for random complete briefs, most of them of a size that is built. */
import { inches } from '../../core/base/quantity.ts';
import { type HoldingPenBrief } from '../../core/brief/types.ts';
import { type Random } from './random.ts';
import { section } from './brief-builder.ts';

export function randomHolding(random: Random): readonly HoldingPenBrief[] {
  const size = (): number => random.between(24, random.chance(0.9) ? 480 : 2400);
  return Array.from({ length: random.whole(1, 3) }, (_, i) => ({
    name: `hold-${String(i + 1)}`, head: random.whole(1, 400), length: inches(size()), width: inches(size()), gate: inches(random.between(10, 240)),
    swings: random.pick(['in', 'out'] as const), hangs: random.pick(['first', 'last'] as const),
    hingePost: null, path: `holdingPens[${String(i)}]`,
  }));
}

/** A pen by hand, any part replaced. */
export const holdingPen = (parts: Partial<HoldingPenBrief> = {}): HoldingPenBrief => ({
  name: 'hold-1', head: 60, length: inches(480), width: inches(360), gate: inches(144), swings: 'in', hangs: 'first', hingePost: null, path: 'holdingPens[0]', ...parts,
});

export const thinPost = () => section('pipe 2 1/2 sch 40');
