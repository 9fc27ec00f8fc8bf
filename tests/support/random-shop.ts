import { type Draw } from './draw.ts';
import { type RandomFence } from './random-fence.ts';

const STOCK = [240, 252, 288, 384, 480, 504, 960] as const;
/** A rail on an inner wall is longer than its bay on the post line: by this at most where arcs are 60 in and up. */
const INNER = 1.3;

/** A shop that can make the fences: stock over every bay and post, and a stock sheet over every bay where the usual ones are too small. */
export function randomShop(draw: Draw, fences: readonly RandomFence[], pivotPost: string, footing: number): Readonly<Record<string, unknown>> {
  const grip = draw.chance(0.6) ? 8 : draw.figure(0, 48);
  const spacing = Math.max(...fences.map((fence) => fence.postSpacing));
  const height = Math.max(...fences.map((fence) => fence.height));
  const trim = draw.chance(0.7) ? 0 : draw.figure(0, 12);
  const needed = Math.max(spacing * INNER + 2 * grip + 4, height + footing, 150) + trim;
  const lengths = STOCK.filter((length) => length >= needed);
  const names = new Set([...fences.flatMap(({ rail, post }) => [rail, post]), pivotPost]);
  const stock = [...names].map((name) => [name, [draw.pick(lengths), ...(draw.chance(0.3) ? [60 + draw.whole(0, 180)] : [])]] as const);
  const rack = [...names].filter(() => draw.chance(0.3)).map((name) => [name, Array.from({ length: draw.whole(1, 3) }, () => ({
    length: draw.figure(6, 960), count: draw.whole(1, 12), ...(draw.chance(0.3) ? { price: draw.figure(0, 200) } : {}),
  }))] as const);
  const prices = [...names].flatMap((name) => (draw.chance(0.2) ? [[name, draw.figure(0, 9)] as const] : []));
  const usual = spacing * INNER < 118 && fences.every(({ rails }) => rails >= 4);
  return {
    ...(needed > 252 || draw.chance(0.7) ? { stock: Object.fromEntries(stock) } : {}),
    sheets: [...(draw.chance(0.7) ? [[48, 120], [60, 120]] : [[48, 96], [60, 144]]), ...(usual ? [[60, 144]] : [[98, Math.ceil(spacing * INNER)], [98, 192]])],
    grip, trim, keepDrop: draw.figure(0, 960), rack: Object.fromEntries(rack), prices: { ...Object.fromEntries(prices), ...(draw.chance(0.2) ? { concrete: 140, '12 ga': 2.5, nothing: 1 } : {}) },
    kerf: draw.figure(0, 1), weldGap: draw.chance(0.6) ? 0.125 : draw.figure(0, 1), springback: draw.pick([0, 0, 0.02, 0.3]),
    gaugeChord: draw.figure(6, 96), coating: draw.pick(['paint', 'galvanized', 'bare']),
    ...(draw.chance(0.5) ? randomWelding(draw) : {}),
    ...(draw.chance(0.2) ? { roll: { [fences[0]!.rail]: { radius: draw.figure(0, 200), length: draw.figure(0, 120) } } } : {}),
  };
}

/** Welding and transport over their whole ranges. */
function randomWelding(draw: Draw): Readonly<Record<string, unknown>> {
  const skinPitch = draw.figure(1, 48);
  return {
    welds: { fillet: draw.figure(0.0625, 0.5), skinPitch, skinLength: draw.figure(0.5, Math.min(12, skinPitch)), efficiency: draw.figure(0.3, 1) },
    truck: { length: draw.figure(60, 720), width: draw.figure(36, 144), load: draw.figure(200, 100_000) }, handLift: draw.figure(10, 200),
  };
}
