/** Catwalks of random project files: along every run and side that has a fence, over their ranges, some along ramps where there are any; a few that no fence or curve allows. */
import { type Draw } from './draw.ts';
import { type OpenedPath } from './random-project-openings.ts';

type Group = Readonly<Record<string, unknown>>;

const RADIANS = Math.PI / 180;
const other = { left: 'right', right: 'left' } as const;

/** A ramp of a file by its run, with how long it is, level. */
export interface RampRun {
  readonly name: string;
  readonly length: number;
}

/** The runs of the ramps of a file: the nth of its kind. Their lengths are the geometry contract's own words (Ramps); defaults are its example's. */
export function rampRuns(ramps: readonly Group[]): readonly RampRun[] {
  const counts = new Map<unknown, number>();
  return ramps.map(({ kind, surface, dockHeight, dockLength, tread, slope }) => {
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
    const height = Number(dockHeight);
    const run = surface === 'stepped' ? (Math.ceil(height / 3.5) - 1) * Number(tread) : height / Math.tan(Number(slope) * RADIANS);
    return { name: `${String(kind)}-${String(counts.get(kind))}`, length: run + Number(dockLength) };
  });
}

/** What the places of catwalks follow from. */
interface WalkedPath extends OpenedPath {
  readonly ramps: readonly RampRun[];
}

/** Beside a ramp: mostly of all its length, some of a part, a few that cannot stand. */
export function rampCatwalk(draw: Draw, { name, length: most }: RampRun, lowest: number, length: (value: number) => number | string): Group {
  const from = draw.chance(0.6) ? 0 : draw.figure(0, Math.max(0, Math.floor(most / 2)));
  const to = Math.max(from + 12, draw.figure(Math.min(from + 40, Math.floor(most)), Math.max(12, Math.floor(most * 16 - 1) / 16)));
  return {
    run: name, side: draw.pick(['left', 'right'] as const), ...(draw.chance(0.7) ? { from: length(from) } : {}), ...(draw.chance(0.4) ? { to: length(to) } : {}),
    ...(draw.chance(0.8) ? { width: length(draw.figure(12, draw.chance(0.8) ? 30 : 60)) } : {}),
    ...(draw.chance(0.25) ? { deckHeight: length(Math.floor(draw.figure(6, 72)) % Math.floor(lowest)) } : {}),
  };
}

/** One or two catwalks. `lowest`: the height of the lowest fence. */
export function randomCatwalks(draw: Draw, path: WalkedPath, lowest: number, length: (value: number) => number | string): readonly Group[] {
  return Array.from({ length: draw.whole(1, 2) }, () => randomCatwalk(draw, path, lowest, length));
}

function randomCatwalk(draw: Draw, path: WalkedPath, lowest: number, length: (value: number) => number | string): Group {
  const { alley, chute, radius, width, sweep, funnelAngle, hand, ramps } = path;
  const inner = (run: OpenedPath['chute'][number]): number => (run.kind === 'straight' ? run.length : run.insideRadius * run.angle * RADIANS);
  const total = chute.reduce((sum, run) => sum + inner(run), 0);
  const i = draw.whole(1, chute.length);
  const a = draw.whole(1, alley.length);
  const side = draw.pick(['left', 'right'] as const);
  const beside = draw.chance(0.6) ? ramps[0] : draw.chance(0.6) ? ramps.at(-1) : undefined;
  if (beside !== undefined) return rampCatwalk(draw, beside, lowest, length);
  const [run, most, on] = draw.pick([
    ['chute', total, side],
    ['crowd-pen', radius * sweep * RADIANS, other[hand]],
    ['junction', (radius - width) / Math.sin(funnelAngle * RADIANS), hand],
    [`chute-${String(i)}`, inner(chute[i - 1]!), side],
    [`alley-${String(a)}`, inner(alley[a - 1]!), side],
  ] as const);
  const from = draw.chance(0.5) ? 0 : draw.figure(0, Math.max(0, Math.floor(most / 3)));
  // To a sixteenth below: a figure at the end of its range may be rounded up in print.
  const to = Math.max(from + 12, draw.figure(Math.min(from + 60, Math.floor(most)), Math.max(12, Math.floor(Math.min(most, from + 600) * 16 - 1) / 16)));
  return {
    run, side: on, ...(draw.chance(0.7) ? { from: length(from) } : {}), ...(draw.chance(0.8) || most > 800 ? { to: length(to) } : {}),
    ...(draw.chance(0.9) ? { width: length(draw.figure(12, draw.chance(0.8) ? 30 : 60)) } : {}),
    ...(draw.chance(0.5) ? { deckHeight: length(Math.floor(draw.figure(0, 72)) % Math.floor(lowest)) } : {}),
  };
}
