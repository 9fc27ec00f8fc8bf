/** Projects that are small but for their ramps, which take their full ranges: for properties of ramps alone. */
import { seededDraw, type Draw } from '../support/draw.ts';
import { type ProjectJson } from '../support/random-brief.ts';
import { rampCatwalk, rampRuns } from '../support/random-catwalks.ts';
import { randomFence } from '../support/random-fence.ts';
import { randomRamp } from '../support/random-subjects.ts';

const PAPERS = ['ANSI A', 'ANSI B', 'ANSI D', 'ISO A4', 'ISO A3', 'ISO A1'] as const;

function project(draw: Draw): ProjectJson {
  const base = {
    height: 60, solidFrom: 2, solidTo: 60, construction: 'lapped', rails: 5, bottomRail: 12, rail: 'pipe 2 sch 40', post: 'pipe 2 1/2 sch 40', postSpacing: 144, sheet: '12 ga',
  };
  const own = randomFence(draw);
  const fences = { crowdPen: base, ramp: draw.chance(0.3) ? {} : draw.chance(0.5) ? own : { ...own, right: { solidTo: 0 } } };
  const made = {
    format: 'penwright-project', version: 1, title: 'Ramps', units: draw.pick(['in', 'in', 'mm']), paper: draw.pick(PAPERS),
    alley: { runs: [{ kind: 'straight', length: 60 }] },
    crowdPen: { radius: 96, hand: draw.pick(['left', 'right']) },
    chute: { width: 28, runs: [{ kind: 'straight', length: 60 }] },
    fences,
    footings: { diameter: draw.figure(4, 48), depth: draw.figure(12, 120) },
    shop: { sheets: [[48, 120], [60, 144], [96, 144]], stock: { [base.rail]: [252], [own.rail]: [252] }, weldGap: draw.pick([0.125, 0, 1]) },
    ramps: Array.from({ length: draw.whole(1, 2) }, () => randomRamp(draw)),
  };
  if (!draw.chance(0.5)) return made;
  const lowest = Math.min(base.height, own.height);
  return { ...made, catwalks: rampRuns(made.ramps).map((ramp) => rampCatwalk(draw, ramp, lowest, (value) => value)) };
}

/** `count` of them from a seed, the same every time; a quarter stand at the corners of the ranges. */
export const randomRamps = (seed: number, count: number): readonly ProjectJson[] =>
  Array.from({ length: count }, (_, index) => project(seededDraw(Math.imul(seed, 0x9e3779b1) + index * 7919, index % 4 === 0)));
