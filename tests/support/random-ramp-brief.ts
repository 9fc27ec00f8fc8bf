/** Random complete briefs with ramps over their full ranges beside a small facility, for tests of what stands behind the door. */
import { planPoint } from '../../core/base/points.ts';
import { degrees, inches } from '../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief, type FenceBrief, type OpeningBrief, type RampBrief, type Side } from '../../core/brief/types.ts';
import { rampFigures } from '../../core/layout/index.ts';
import { fences, makeBrief } from './brief-builder.ts';
import { mirrorBrief, randomFence } from './random-brief-object.ts';
import { seeded, type Random } from './random.ts';

function randomRamp(random: Random, kind: RampBrief['kind'], nth: number, path: string): RampBrief {
  return {
    name: `${kind}-${String(nth)}`,
    kind,
    dockHeight: inches(random.between(6, 72)),
    width: inches(random.between(18, 240)),
    dockLength: inches(random.chance(0.2) ? 0 : random.between(12, 480)),
    surface: random.chance(0.5)
      ? { kind: 'stepped', tread: inches(random.between(10, 24)) }
      : { kind: 'cleated', slope: degrees(random.between(2, 35)), cleat: inches(random.between(1, 6)) },
    at: random.chance(0.2) ? planPoint(random.between(1200, 2400), random.between(-600, 600)) : null,
    heading: random.chance(0.3) ? degrees(random.between(-360, 360)) : null,
    path,
  };
}

/** A gate somewhere beside the dock of a ramp; some over the end of it. */
function dockGate(random: Random, ramp: RampBrief, i: number): OpeningBrief {
  const { run } = rampFigures(ramp);
  const from = ramp.kind === 'load' ? run : 0;
  const at = inches(from + random.between(0, ramp.dockLength));
  const stands = { run: ramp.name, side: random.pick<'left' | 'right'>(['left', 'right']), at, path: `openings[${String(i)}]` } as const;
  if (random.chance(0.5)) return { kind: 'man-gate', ...stands, width: inches(random.between(10, 24)) };
  return {
    kind: 'pen-gate', ...stands, width: inches(random.between(10, 120)), swings: random.pick(['in', 'out']), hangs: random.pick(['first', 'last']), hingePost: null,
  };
}

/** Brief number `seed`: the same every time. */
export function randomRampBrief(seed: number): Brief {
  const random = seeded(seed);
  const left = randomFence(random, 'fences.ramp.left');
  const right = random.chance(0.6) ? { ...left, path: 'fences.ramp.right' } : randomFence(random, 'fences.ramp.right');
  const counts = { load: random.whole(0, 2), unload: random.whole(1, 2) };
  const ramps = (['load', 'unload'] as const).flatMap((kind) =>
    Array.from({ length: counts[kind] }, (_, i) => randomRamp(random, kind, i + 1, `ramps[${String(kind === 'load' ? i : counts.load + i)}]`)));
  const hand = random.pick<'left' | 'right'>(['left', 'right']);
  const made = makeBrief({
    openings: ramps.flatMap((ramp, i) => (ramp.dockLength > 0 && random.chance(0.5) ? [dockGate(random, ramp, i)] : [])),
    crowdPen: { hand },
    fences: { ...fences(), ramp: { left, right } },
    ramps,
    footings: { diameter: inches(random.between(4, 48)), depth: inches(random.between(12, 120)) },
    control: { b: planPoint(random.between(-400, 400), random.between(100, 300)), c: null, note: '' },
    shop: { weldGap: inches(random.chance(0.7) ? 0.125 : random.between(0, 1)), sheets: [[inches(48), inches(120)], [inches(96), inches(144)]] },
  });
  // A few of those that are known to have no room for their steps at the truck's end.
  const decked = ramps.filter(({ dockLength }) => random.chance(0.5) && (dockLength >= 24 || random.chance(0.1)));
  return { ...made, catwalks: decked.map((ramp, i) => catwalkBeside(random, ramp, { left, right }, `catwalks[${String(i)}]`)) };
}

/** A catwalk along all of a ramp, along a part of it, or as high as its fence does not allow everywhere. */
function catwalkBeside(random: Random, ramp: RampBrief, fences: Readonly<Record<Side, FenceBrief>>, path: string): CatwalkBrief {
  const { run } = rampFigures(ramp);
  const most = run + ramp.dockLength;
  const side = random.pick<Side>(['left', 'right']);
  const { height } = fences[side];
  const from = random.chance(0.75) ? 0 : random.between(0, most / 2);
  // Of a low fence the usual deck lies too near the ground at the foot of the ramp.
  const usual = height > 50 || random.chance(0.1);
  return {
    run: ramp.name, side, from: inches(from), to: random.chance(0.75) ? null : inches(random.between(from + 40, Math.max(from + 40, most))),
    width: inches(random.between(12, random.chance(0.8) ? 30 : 60)), deckHeight: usual && random.chance(0.8) ? null : inches(random.between(8, height)), path,
  };
}

/** The mirrored facility with its mirrored ramps and stakeout points. */
export function mirrorRampBrief(brief: Brief): Brief {
  const { b, c, note } = brief.control;
  return {
    ...mirrorBrief(brief),
    control: { b: planPoint(0 - b.x, b.y), c: c === null ? null : planPoint(0 - c.x, c.y), note },
    ramps: brief.ramps.map((ramp) => ({
      ...ramp,
      at: ramp.at === null ? null : planPoint(0 - ramp.at.x, ramp.at.y),
      heading: ramp.heading === null ? null : (Math.PI - ramp.heading) as NonNullable<RampBrief['heading']>,
    })),
  };
}
