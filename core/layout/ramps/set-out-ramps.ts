import { curveBounds, joinBounds, pointBounds } from '../../base/bounds.ts';
import { type PlanPoint } from '../../base/points.ts';
import { inches } from '../../base/quantity.ts';
import { DEFAULTS } from '../../brief/defaults.ts';
import { type Brief, type Fault, type RampBrief } from '../../brief/types.ts';
import { stepFigures } from '../catwalks/flight.ts';
import { fenceSection } from '../fence-section.ts';
import { faceCurve } from '../fence-points.ts';
import { fitOpenings } from '../openings/fit.ts';
import { type Spot } from '../openings/spots.ts';
import { type Fence, type Foul, type Post, type Ramp } from '../types.ts';
import { dockSpots } from './dock-spots.ts';
import { placeRamps } from './place-ramps.ts';
import { dockEnds, rampFence, rampLines, rampPosts } from './ramp-fences.ts';

/** The ramps of a brief with their fences and posts, all in walking order. */
export interface SetOutRamps {
  readonly ramps: readonly Ramp[];
  readonly fences: readonly Fence[];
  readonly posts: readonly Post[];
  /** Openings of their docks that stand, and those that do not. */
  readonly spots: readonly Spot[];
  readonly fouls: readonly Foul[];
  readonly faults: readonly Fault[];
}

/** How far the widest catwalk beside a ramp goes out from its fence, with the longest steps that it may have. */
function deckReach(brief: Brief, ramp: RampBrief): number {
  return Math.max(0, ...brief.catwalks.filter(({ run }) => run === ramp.name).map(({ side, width, deckHeight }) => {
    const over = deckHeight ?? Math.max(0, brief.fences.ramp[side].height - DEFAULTS.railHeight);
    const { risers, tread } = stepFigures(ramp.dockHeight + over);
    return width + risers * tread;
  }));
}

/** Sets out the ramps beside what stands already. `roof`: the corners of the one over the pad. */
export function setOutRamps(brief: Brief, fences: readonly Fence[], posts: readonly Post[], roof: readonly PlanPoint[]): SetOutRamps {
  const { hand } = brief.crowdPen;
  const reach = brief.footings.diameter / 2;
  const { b, c } = brief.control;
  const taken = joinBounds([
    ...fences.map((fence) => curveBounds(faceCurve(fence, 0, fence.length, 0))),
    ...posts.map(({ at }) => pointBounds([{ x: at.x - reach, y: at.y - reach }, { x: at.x + reach, y: at.y + reach }])),
    pointBounds([b, ...(c === null ? [] : [c]), ...roof]),
  ]);
  const sections = [fenceSection(brief.fences.ramp.left), fenceSection(brief.fences.ramp.right)];
  const depth = Math.max(...sections.map(({ k, D }) => k + Math.max(reach, D / 2)));
  const ramps = placeRamps(brief.ramps, { taken, hand, depth: (ramp) => inches(depth + deckReach(brief, ramp)) });
  const lines = ramps.flatMap((ramp) => rampLines(brief, ramp).map((line) => ({ ramp, line })));
  const { spots, faults } = dockSpots(brief, ramps, lines);
  const rampOf = new Map(lines.map(({ ramp, line }) => [line, ramp]));
  const fitted = fitOpenings(spots, (line) => dockEnds(rampOf.get(line)!)!);
  const own = lines.map(({ ramp, line }) => ({ ramp, fence: rampFence(ramp, line, fitted.cuts.get(line) ?? []) }));
  return {
    ramps, fences: own.map(({ fence }) => fence), posts: own.flatMap(({ ramp, fence }) => rampPosts(brief, ramp, fence)),
    spots: fitted.spots, fouls: fitted.fouls, faults,
  };
}
