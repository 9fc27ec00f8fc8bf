import { boundsTouch, joinBounds, pointBounds, type Bounds } from '../../base/bounds.ts';
import { planPoint, unitAt, type PlanPoint } from '../../base/points.ts';
import { inches, radians, type Inches, type Radians } from '../../base/quantity.ts';
import { type RampBrief, type Side } from '../../brief/types.ts';
import { turnSign } from '../pose.ts';
import { walkedRun } from '../walked-run.ts';
import { rampFigures } from './figures.ts';
import { type Ramp } from '../types.ts';

/** Ground left open beside a ramp that nobody placed, inches: a way for people and a pickup (common practice, no source). */
const OPEN_GROUND = 144;

export interface RampGround {
  /** What stands already: fences, posts, stakeout points. */
  readonly taken: Bounds;
  /** The crowd pen's: ramps stand on the other side, so that a mirrored project is mirrored in them too. */
  readonly hand: Side;
  /** How far what stands beside a ramp reaches out from its faces: fences with their holes, catwalks with their steps. */
  readonly depth: (ramp: RampBrief) => Inches;
}

/**
 * Where each ramp lies. One with `at` lies there; another clear of all that stands and of the ramps before it, side by side, its low
 * end on the pivot post's level. One without a heading has its dock toward +y, so that trucks come to all of them from one side.
 */
export function placeRamps(briefs: readonly RampBrief[], ground: RampGround): readonly Ramp[] {
  let { taken } = ground;
  const placed = new Map<RampBrief, Ramp>();
  for (const brief of briefs) {
    if (brief.at === null) continue;
    const ramp = rampAt(brief, brief.at);
    placed.set(brief, ramp);
    taken = joinBounds([taken, outline(ramp, ground.depth(brief))]);
  }
  for (const brief of briefs) {
    if (brief.at !== null) continue;
    const ramp = rampAt(brief, clearPlace(outline(rampAt(brief, planPoint(0, 0)), ground.depth(brief)), taken, turnSign(ground.hand)));
    placed.set(brief, ramp);
    taken = joinBounds([taken, outline(ramp, ground.depth(brief))]);
  }
  return briefs.map((brief) => placed.get(brief)!);
}

/** The low end's place that puts a box drawn about it beside what is taken. */
function clearPlace(box: Bounds, taken: Bounds, way: 1 | -1): PlanPoint {
  const x = way > 0 ? taken.right + OPEN_GROUND - box.left : taken.left - OPEN_GROUND - box.right;
  const moved = { ...box, left: box.left + x, right: box.right + x };
  if (boundsTouch(moved, taken)) throw new Error(`a ramp placed on what stands already: ${String(x)}`);
  return planPoint(x, 0);
}

const UP = Math.PI / 2;

function rampAt(brief: RampBrief, at: PlanPoint): Ramp {
  const figures = rampFigures(brief);
  const length = inches(figures.run + figures.dockLength);
  const heading: Radians = brief.heading ?? radians(brief.kind === 'load' ? UP : -UP);
  const known = brief.kind === 'load' ? 'start' : 'end';
  const run = walkedRun(brief.name, { kind: 'straight', length }, brief.width, known, { at, heading }, null);
  return { name: brief.name, brief, figures, at, heading, length, run };
}

/** The box round a ramp with its fences. */
function outline({ run, brief, heading }: Ramp, depth: Inches): Bounds {
  if (run.path.kind !== 'line') throw new Error(`a ramp that is not straight: ${run.name}`);
  const half = brief.width / 2 + depth;
  const out = unitAt(heading + UP);
  const along = unitAt(heading);
  return pointBounds([run.path.a, run.path.b].flatMap((end, i) => [-1, 1].map((side) => {
    const past = i === 0 ? -depth : depth;
    return { x: end.x + out.x * half * side + along.x * past, y: end.y + out.y * half * side + along.y * past };
  })));
}
