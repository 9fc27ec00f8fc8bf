/** Random complete briefs over the ranges of the project contract, for tests of what stands behind the door. */
import { degrees, inches, radians, type Inches } from '../../core/base/quantity.ts';
import { otherSide, railRows, type Brief, type FenceBrief, type RunBrief, type Side, type SortPenBrief, type SqueezePadBrief } from '../../core/brief/index.ts';
import { arc, fence, makeBrief, section, sheet, straight } from './brief-builder.ts';
import { randomHolding } from './random-holding.ts';
import { mirrorOpenings, randomOpenings } from './random-openings.ts';
import { seeded, type Random } from './random.ts';

const RAILS = ['pipe 1 1/4 sch 40', 'pipe 1 1/2 sch 40', 'pipe 2 sch 40', 'tubing 2 3/8 x 0.190', 'pipe 2 1/2 sch 40'];
const POSTS = ['pipe 2 1/2 sch 40', 'tubing 2 7/8 x 0.217', 'pipe 3 sch 40', 'pipe 4 sch 40', 'pipe 5 sch 40'];
const SHEETS = ['7 ga', '10 ga', '12 ga', '16 ga', '3 mm'];

/** One fence, within what the door lets through: rows no closer than a rail, coped rails thinner than their posts. */
export function randomFence(random: Random, path: string): FenceBrief {
  for (;;) {
    const height = random.between(36, 96);
    const rail = section(random.pick([...RAILS, 'tube 2 x 3 x 3/16']));
    const post = section(random.pick([...POSTS, 'tube 3 x 4 x 1/4']));
    const made = fence(path, {
      height: inches(height),
      solidFrom: inches(random.between(0, 24)),
      solidTo: inches(random.chance(0.3) ? height : random.chance(0.3) ? 0 : random.between(0, height)),
      construction: random.pick(['lapped', 'lapped', 'coped'] as const),
      rails: random.whole(2, 12),
      bottomRail: inches(random.between(4, 36)),
      rail,
      post,
      postSpacing: inches(random.between(24, 144)),
      sheet: random.chance(0.85) ? sheet(random.pick(SHEETS)) : null,
    });
    const rows = railRows(made);
    const clear = rows.every((row, i) => i === 0 || row - rows[i - 1]! >= rail.along);
    const coped = made.construction === 'coped' && (rail.shape !== 'round' || post.shape !== 'round' || rail.across >= post.across);
    if (clear && !coped && (made.solidTo === 0 || made.solidTo > made.solidFrom)) return made;
  }
}

function randomRuns(random: Random, most: number): readonly RunBrief[] {
  return Array.from({ length: random.chance(0.05) ? 12 : random.whole(1, most) }, () =>
    random.chance(0.5)
      ? straight(random.chance(0.7) ? random.between(12, 400) : random.between(12, 2400))
      : arc(random.between(60, random.chance(0.7) ? 260 : 1200), random.between(5, random.chance(0.7) ? 120 : 270), random.pick(['left', 'right'])));
}

/** Less than this of an alley's last run is mostly too short for the corner at the pivot post. */
const ROOM = 48;

/** The runs of an alley, the last of them longer where the corner at the pivot post would hardly fit on it. */
function withRoom(runs: readonly RunBrief[]): readonly RunBrief[] {
  return runs.map((run, i) => {
    if (i < runs.length - 1) return run;
    if (run.kind === 'straight') return run.length < ROOM ? { ...run, length: inches(run.length + ROOM) } : run;
    return run.insideRadius * run.angle < ROOM ? { ...run, angle: radians(run.angle + ROOM / run.insideRadius) } : run;
  });
}

/** A pad over its ranges, small ones more often. */
function randomPad(random: Random): SqueezePadBrief {
  const size = (): Inches => inches(random.chance(0.6) ? random.between(48, 240) : random.between(48, 1200));
  const open = (['in', 'out', 'left', 'right'] as const).filter(() => random.chance(0.5));
  const roof = random.chance(0.5) ? { length: size(), width: size(), open, daylight: random.between(0, 1) } : null;
  return { length: size(), width: size(), roof };
}

function randomSortPens(random: Random): readonly SortPenBrief[] {
  return Array.from({ length: random.whole(1, 4) }, (_, index) => ({
    name: `sort-${String(index + 1)}`, side: random.pick(['left', 'right'] as const), gate: inches(random.chance(0.8) ? random.between(48, 168) : random.between(10, 240)), path: `sortPens[${String(index)}]`,
  }));
}

/** Random brief number `seed`: the same every time. Half of them have one fence throughout, as most projects do. */
export function randomBriefObject(seed: number): Brief {
  const random = seeded(seed);
  const base = randomFence(random, 'fences.crowdPen');
  const same = random.chance(0.5);
  const other = (path: string): FenceBrief => (same || random.chance(0.4) ? base : randomFence(random, path));
  const pair = (place: string): Record<Side, FenceBrief> => ({ left: other(`${place}.left`), right: other(`${place}.right`) });
  const everywhere = { left: base, right: base };
  const radius = random.between(72, 240);
  const sweep = random.chance(0.6) ? 180 : random.between(90, 240);
  const bare = makeBrief({
    alley: { runs: withRoom(randomRuns(random, 3)) },
    crowdPen: {
      radius: inches(radius),
      sweep: degrees(sweep),
      hand: random.pick(['left', 'right']),
      funnelAngle: degrees(random.between(Math.max(10, sweep - 170), 90)),
      pivotPost: section(random.pick([...POSTS, 'tube 4 x 4 x 1/4'])),
      pivotLength: random.chance(0.2) ? inches(120) : null,
    },
    chute: { width: inches(random.between(14, 40)), runs: randomRuns(random, 6) },
    fences: { crowdPen: base, alley: pair('fences.alley'), junction: pair('fences.junction'), chute: pair('fences.chute'), ramp: pair('fences.ramp'), pad: everywhere, pens: everywhere },
    footings: { diameter: inches(random.between(4, 48)), depth: inches(random.between(12, 120)) },
    shop: {
      sheets: random.chance(0.7)
        ? [[inches(48), inches(120)], [inches(60), inches(120)]]
        : [[inches(48), inches(96)], [inches(60), inches(144)], [inches(72), inches(144)]],
      weldGap: inches(random.chance(0.7) ? 0.125 : random.between(0, 1)),
      grip: inches(random.between(0, 24)),
      coating: random.pick(['paint', 'galvanized', 'bare']),
      ...(random.chance(0.5) ? { welds: { fillet: inches(random.between(0.0625, 0.5)), skinLength: inches(random.between(0.5, 6)), skinPitch: inches(random.between(6, 48)), efficiency: random.between(0.3, 1) } } : {}),
      stock: random.chance(0.5) ? {} : { [base.rail.name]: [inches(240), inches(random.between(240, 504))] },
    },
  });
  const openings = randomOpenings(random, bare);
  const yard = { ...bare.fences, pad: pair('fences.pad'), pens: pair('fences.pens') };
  return { ...bare, openings, fences: yard, squeezePad: random.chance(0.5) ? randomPad(random) : null, holdingPens: random.chance(0.3) ? randomHolding(random) : [], sortPens: random.chance(0.4) ? randomSortPens(random) : [] };
}

const swap = <T>({ left, right }: Readonly<Record<Side, T>>): Record<Side, T> => ({ left: right, right: left });
const mirrorRun = (run: RunBrief): RunBrief => (run.kind === 'straight' ? run : { ...run, hand: otherSide(run.hand) });

const mirrorPad = (pad: SqueezePadBrief): SqueezePadBrief => (pad.roof === null ? pad : {
  ...pad, roof: { ...pad.roof, open: pad.roof.open.map((side) => (side === 'in' || side === 'out' ? side : otherSide(side))) },
});

/** The brief of the mirrored facility: every hand and every side the other one. */
export function mirrorBrief(brief: Brief): Brief {
  const { crowdPen, alley, junction, chute, ramp, pad, pens } = brief.fences;
  return {
    ...brief,
    alley: { runs: brief.alley.runs.map(mirrorRun) },
    crowdPen: { ...brief.crowdPen, hand: otherSide(brief.crowdPen.hand) },
    chute: { ...brief.chute, runs: brief.chute.runs.map(mirrorRun) },
    fences: { crowdPen, alley: swap(alley), junction: swap(junction), chute: swap(chute), ramp: swap(ramp), pad: swap(pad), pens: swap(pens) },
    openings: mirrorOpenings(brief.openings),
    catwalks: brief.catwalks.map((one) => ({ ...one, side: otherSide(one.side) })),
    squeezePad: brief.squeezePad === null ? null : mirrorPad(brief.squeezePad),
    sortPens: brief.sortPens.map((pen) => ({ ...pen, side: otherSide(pen.side) })),
  };
}
