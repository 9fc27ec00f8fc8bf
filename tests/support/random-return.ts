/** A return alley of random project files, from anywhere along the chute. */
import { type Draw } from './draw.ts';
import { type RandomRun } from './random-path.ts';

type Group = Readonly<Record<string, unknown>>;

export function randomReturn(draw: Draw, chute: readonly RandomRun[], width: number, length: (value: number) => number | string): Group {
  const total = chute.reduce((sum, run) => sum + (run.kind === 'straight' ? run.length : (run.insideRadius + width / 2) * run.angle * (Math.PI / 180)), 0);
  const run = (): Group => (draw.chance(0.5)
    ? { kind: 'straight', length: draw.figure(12, 400) }
    : { kind: 'arc', insideRadius: draw.figure(60, 240), angle: draw.whole(5, 120), hand: draw.pick(['left', 'right']) });
  return {
    from: { run: 'chute', side: draw.pick(['left', 'right']), at: length(draw.figure(0, Math.floor(total * 16 - 1) / 16)) },
    ...(draw.chance(0.7) ? { width: draw.figure(14, 60) } : {}),
    runs: Array.from({ length: draw.whole(1, 3) }, run),
  };
}
