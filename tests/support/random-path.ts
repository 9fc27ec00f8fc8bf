import { type Draw } from './draw.ts';

export type RandomRun =
  | { readonly kind: 'straight'; readonly length: number }
  | { readonly kind: 'arc'; readonly insideRadius: number; readonly angle: number; readonly hand: 'left' | 'right' };

/** Long runs make drawings of hundreds of bays: now and then is enough. */
const FEW_BAYS = 420;

const straight = (draw: Draw, least: number, greatest: number): RandomRun => ({ kind: 'straight', length: draw.figure(least, greatest) });

/** An arc whose inner fence, `depth` thick, keeps `room` between its end posts. */
function arc(draw: Draw, depth: number, room: number, longest: number): RandomRun {
  const insideRadius = draw.chance(0.8) ? draw.figure(60, 288) : draw.figure(60, 1200);
  const least = Math.max(5, Math.ceil(((room / (insideRadius - depth)) * 180) / Math.PI) + 1);
  const greatest = Math.max(least, Math.min(270, Math.floor(((longest / insideRadius) * 180) / Math.PI)));
  return { kind: 'arc', insideRadius, angle: draw.chance(0.7) ? draw.whole(least, Math.min(greatest, Math.max(least, 110))) : draw.figure(least, greatest), hand: draw.pick(['left', 'right']) };
}

/** Runs in any number up to the most that a path may have, few of them mostly; the first long enough for the corner at the mouth. */
export function randomRuns(draw: Draw, depth: number, most: number): readonly RandomRun[] {
  const many = most > 6 && draw.chance(0.05);
  const count = many ? draw.whole(7, most) : draw.chance(0.8) ? draw.whole(1, Math.min(4, most)) : draw.whole(1, Math.min(6, most));
  const room = depth + 10;
  const extreme = !many && draw.chance(0.06);
  return Array.from({ length: count }, (_, index) => {
    const least = index === 0 ? Math.max(12, room + depth) : Math.max(12, room);
    if (draw.chance(0.55)) return straight(draw, least, many ? 96 : extreme ? 2400 : Math.max(least, FEW_BAYS / 2));
    return arc(draw, depth, index === 0 ? room + depth : room, many ? 96 : extreme ? 1500 : FEW_BAYS);
  });
}

/** An alley: its last run keeps `left` inches of the face at the pivot post, on whichever side that is. */
export function randomAlley(draw: Draw, depth: number, left: number): readonly RandomRun[] {
  const runs = randomRuns(draw, depth, 3).slice(0, -1);
  const length = Math.max(12, Math.ceil(left));
  const last = draw.chance(0.8)
    ? straight(draw, Math.min(2400, length), Math.min(2400, length + FEW_BAYS / 2))
    : arc(draw, depth, length + depth, length * 3 + 100);
  return [...runs, last];
}
