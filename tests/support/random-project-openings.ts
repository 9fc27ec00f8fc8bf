/** Openings of random project files: every kind on every fence, over their full ranges, some over a run's end or over one another. */
import { type Draw } from './draw.ts';
import { type RandomRun } from './random-path.ts';

type Group = Readonly<Record<string, unknown>>;

/** What the places of openings follow from. */
export interface OpenedPath {
  readonly alley: readonly RandomRun[];
  readonly chute: readonly RandomRun[];
  readonly radius: number;
  readonly width: number;
  readonly sweep: number;
  readonly funnelAngle: number;
  readonly hand: 'left' | 'right';
}

const RADIANS = Math.PI / 180;
const other = { left: 'right', right: 'left' } as const;

/** Along the inner face, the shortest that a person measures. */
const shortest = (run: RandomRun): number => (run.kind === 'straight' ? run.length : run.insideRadius * run.angle * RADIANS);
const centerline = (run: RandomRun, width: number): number => (run.kind === 'straight' ? run.length : (run.insideRadius + width / 2) * run.angle * RADIANS);

/** One to four openings; `length` writes a length in one of its forms. */
export function randomProjectOpenings(draw: Draw, path: OpenedPath, length: (value: number) => number | string): readonly Group[] {
  return Array.from({ length: draw.whole(1, 4) }, () => randomOpening(draw, path, length));
}

function randomOpening(draw: Draw, path: OpenedPath, length: (value: number) => number | string): Group {
  const { alley, chute, radius, width, sweep, funnelAngle, hand } = path;
  const total = chute.reduce((sum, run) => sum + centerline(run, width), 0);
  // To a sixteenth below: a figure at the end of its range may be rounded up in print.
  const at = (most: number): number | string => length(draw.figure(0, Math.max(0, Math.floor(most * 16 - 1) / 16)));
  const i = draw.whole(1, chute.length);
  if (draw.chance(0.4)) {
    const whole = draw.chance(0.6);
    const run = whole ? 'chute' : `chute-${String(i)}`;
    return { kind: 'backstop', run, at: at(whole ? total : centerline(chute[i - 1]!, width)), ...(draw.chance(0.8) ? { held: draw.pick(['rope', 'pin', 'none']) } : {}) };
  }
  const a = draw.whole(1, alley.length);
  if (draw.chance(0.15)) {
    const swings = draw.pick(['forward', 'back'] as const);
    const [run, most] = draw.pick([[`chute-${String(i)}`, centerline(chute[i - 1]!, width)], [`alley-${String(a)}`, centerline(alley[a - 1]!, radius)]] as const);
    return { kind: 'alley-gate', run, side: draw.pick(['left', 'right']), at: at(most), ...(draw.chance(0.7) ? { swings } : {}) };
  }
  const side = draw.pick(['left', 'right'] as const);
  const [run, most, on] = draw.pick([
    ['crowd-pen', radius * sweep * RADIANS, other[hand]],
    ['junction', (radius - width) / Math.sin(funnelAngle * RADIANS), hand],
    ['chute', total, side],
    [`chute-${String(i)}`, shortest(chute[i - 1]!), side],
    [`alley-${String(a)}`, shortest(alley[a - 1]!), side],
  ] as const);
  const clear = draw.chance(0.7) ? draw.figure(10, 24) : draw.figure(10, 240);
  if (draw.chance(0.4)) {
    const ways = { swings: draw.pick(['in', 'out']), hangs: draw.pick(['first', 'last']), hingePost: draw.pick(['pipe 3 sch 40', 'pipe 6 sch 40']) };
    const said = Object.fromEntries(Object.entries(ways).filter(([name]) => draw.chance(name === 'hingePost' ? 0.15 : 0.6)));
    return { kind: 'pen-gate', run, side: on, at: at(most), ...(draw.chance(0.9) ? { width: length(clear) } : {}), ...said };
  }
  return { kind: 'man-gate', run, side: on, at: at(most), ...(draw.chance(0.9) ? { width: length(clear) } : {}) };
}
