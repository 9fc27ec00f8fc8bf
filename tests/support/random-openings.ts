/** Openings for random complete briefs: every kind, on every run that has a fence, over their full ranges, some of them over a run's end or one another. */
import { inches } from '../../core/base/quantity.ts';
import { otherSide, type Brief, type OpeningBrief, type RunBrief, type Side } from '../../core/brief/index.ts';
import { type Random } from './random.ts';

type Bare = Pick<Brief, 'alley' | 'chute' | 'crowdPen'>;

/** Shortest length that a person could measure along a run: its inner face or its centerline. */
const shortest = (run: RunBrief): number => (run.kind === 'straight' ? run.length : run.insideRadius * run.angle);
const centerline = (run: RunBrief, width: number): number => (run.kind === 'straight' ? run.length : (run.insideRadius + width / 2) * run.angle);

export function randomOpenings(random: Random, brief: Bare): readonly OpeningBrief[] {
  const count = random.chance(0.4) ? 0 : random.whole(1, 4);
  return Array.from({ length: count }, (_, i) => randomOpening(random, brief, `openings[${String(i)}]`));
}

function randomOpening(random: Random, brief: Bare, path: string): OpeningBrief {
  const { alley, chute, crowdPen } = brief;
  const total = chute.runs.reduce((sum, run) => sum + centerline(run, chute.width), 0);
  const place = (length: number): OpeningBrief['at'] => inches(random.chance(0.1) ? random.pick([0, length]) : random.between(0, length));
  if (random.chance(0.4)) {
    const i = random.whole(0, chute.runs.length - 1);
    const whole = random.chance(0.5);
    const at = place(whole ? total : centerline(chute.runs[i]!, chute.width));
    return { kind: 'backstop', run: whole ? 'chute' : `chute-${String(i + 1)}`, at, held: random.pick(['rope', 'pin', 'none']), path };
  }
  if (random.chance(0.15)) {
    const i = random.whole(0, chute.runs.length - 1);
    const a = random.whole(0, alley.runs.length - 1);
    const on = random.chance(0.5);
    const [run, most] = on ? [`chute-${String(i + 1)}`, centerline(chute.runs[i]!, chute.width)] as const : [`alley-${String(a + 1)}`, centerline(alley.runs[a]!, crowdPen.radius)] as const;
    return {
      kind: 'alley-gate', run, side: random.pick(['left', 'right']), at: place(most), width: on ? chute.width : crowdPen.radius, swings: random.pick(['forward', 'back']), hingePost: null, path,
    };
  }
  const latched = random.chance(0.4);
  const width = inches(random.chance(0.7) ? random.between(10, 24) : random.between(10, 240));
  const side = random.pick<Side>(['left', 'right']);
  const gate = (run: string, length: number, on: Side = side): OpeningBrief => {
    const stands = { run, side: on, at: place(length), width, path } as const;
    return latched ? { kind: 'pen-gate', ...stands, swings: random.pick(['in', 'out']), hangs: random.pick(['first', 'last']), hingePost: null } : { kind: 'man-gate', ...stands };
  };
  const i = random.whole(0, chute.runs.length - 1);
  const a = random.whole(0, alley.runs.length - 1);
  const { radius, sweep, funnelAngle, hand } = crowdPen;
  const choices = [
    () => gate('crowd-pen', radius * sweep, otherSide(hand)),
    () => gate('junction', (radius - chute.width) / Math.sin(funnelAngle), hand),
    () => gate('chute', total),
    () => gate(`chute-${String(i + 1)}`, shortest(chute.runs[i]!)),
    () => gate(`alley-${String(a + 1)}`, shortest(alley.runs[a]!)),
  ];
  return random.pick(choices)();
}

/** The openings of the mirrored facility. */
export const mirrorOpenings = (openings: readonly OpeningBrief[]): readonly OpeningBrief[] =>
  openings.map((opening) => (opening.kind === 'backstop' ? opening : { ...opening, side: otherSide(opening.side) }));
