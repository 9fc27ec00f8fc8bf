/** Subjects that stand in and beside the fences, as groups of a file: valid ones, in range and on runs that there are. */
import { type Draw } from './draw.ts';

type Group = Readonly<Record<string, unknown>>;

const some = (draw: Draw, most: number, make: () => Group): readonly Group[] => Array.from({ length: draw.whole(0, most) }, make);

/** A ramp over the ranges; some of them placed. */
export function randomRamp(draw: Draw): Group {
  return {
    kind: draw.pick(['load', 'unload']), dockHeight: draw.figure(6, 72), width: draw.figure(18, 240), dockLength: draw.figure(0, 480),
    ...(draw.chance(0.5) ? { surface: 'stepped', tread: draw.figure(10, 24) } : { surface: 'cleated', slope: draw.figure(2, 35), cleat: draw.figure(1, 6) }),
    ...(draw.chance(0.3) ? { at: [draw.figure(-600, 600), draw.figure(-600, 600)], heading: draw.figure(-180, 180) } : {}),
  };
}

/** A holding pen; most of them of a size that is built, some of any. */
export function randomHoldingPen(draw: Draw): Group {
  const said = {
    gate: draw.figure(10, 240), length: draw.figure(24, draw.chance(0.9) ? 480 : 24_000), width: draw.figure(24, draw.chance(0.9) ? 480 : 24_000),
    swings: draw.pick(['in', 'out']), hangs: draw.pick(['first', 'last']), hingePost: draw.pick(['pipe 3 sch 40', 'pipe 6 sch 40']),
  };
  const chances: Readonly<Record<string, number>> = { gate: 0.8, length: 0.3, width: 0.3, hingePost: 0.1 };
  return { head: draw.chance(0.85) ? draw.whole(1, 60) : draw.whole(1, 20000), ...Object.fromEntries(Object.entries(said).filter(([name]) => draw.chance(chances[name] ?? 0.5))) };
}

/** Ramps, pad and pens; each of them left out as often as not. */
export function randomSubjects(draw: Draw): Group {
  const side = (): string => draw.pick(['left', 'right']);
  const padSize = (): number => draw.figure(48, draw.chance(0.75) ? 240 : 1200);
  const roof = (): Group => ({ length: draw.figure(48, 1200), width: draw.figure(48, 1200), open: draw.pick([['in', 'out'], ['left'], []]), daylight: draw.pick([0, 0.2, 1]) });
  const all: Group = {
    ramps: some(draw, 2, () => randomRamp(draw)),
    squeezePad: { length: padSize(), width: padSize(), ...(draw.chance(0.5) ? { roof: roof() } : {}) },
    sortPens: some(draw, 2, () => ({ side: side(), ...(draw.chance(0.8) ? { gate: draw.chance(0.7) ? draw.figure(60, 168) : draw.figure(10, 240) } : {}) })),
    holdingPens: some(draw, 3, () => randomHoldingPen(draw)),
  };
  return Object.fromEntries(Object.entries(all).filter(() => draw.chance(0.5)));
}

/** Site, cattle and floors over their ranges. */
export function randomSurroundings(draw: Draw): Group {
  return {
    site: {
      latitude: draw.figure(-66, 66), longitude: draw.figure(-180, 180), timeZone: draw.pick(['America/Denver', 'Australia/Sydney', 'Etc/GMT+7', 'UTC']),
      bearing: draw.figure(0, 360), soil: draw.pick(['clay', 'sand', 'gravel', 150]), volume: draw.pick(['ranch', 'feedlot', 'auction']),
      jurisdiction: draw.pick(['us', 'eu', 'uk', 'ontario']), tenure: draw.pick(['owned', 'leased']),
      work: { from: draw.pick(['00:00', '06:30']), to: draw.pick(['17:00', '23:59']), months: draw.pick([[10, 11], [1], [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]]) },
    },
    cattle: {
      weight: draw.figure(150, 3000), kind: draw.pick(['calf', 'yearling', 'mature']), flighty: draw.chance(0.5), horned: draw.chance(0.5),
      bodyLength: draw.figure(36, 130), eyeHeight: draw.figure(20, 72), headPerDay: draw.whole(1, 20000),
    },
    floors: { fall: draw.pick([0, 0.02, 0.1]), thickness: draw.figure(3, 12), pattern: 'broomed' },
  };
}
