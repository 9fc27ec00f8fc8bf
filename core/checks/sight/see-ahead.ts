import { curvePoint, type Curve } from '../../base/curve.ts';
import { planPoint, distance, sub, type PlanPoint, type Vec } from '../../base/points.ts';
import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Run } from '../../layout/types.ts';
import { grazes } from './grazes.ts';
import { hits } from './hits.ts';

/** What an animal at the mouth sees of the chute, and the sight line that ends it. */
export interface Sight {
  /** Along the centerline from the mouth, as far as all of it is seen. */
  readonly seen: Inches;
  /** Whether the chute is seen to its end. */
  readonly whole: boolean;
  /** The run in which the seen length ends. */
  readonly run: string;
  readonly eye: PlanPoint;
  /** Where the last sight line grazes a wall; null where the whole chute is seen. */
  readonly graze: PlanPoint | null;
  /** Where that line crosses the centerline, or the chute's end. */
  readonly end: PlanPoint;
}

/** A station at which something may come into or go out of sight. */
interface Turn {
  readonly station: number;
  readonly graze: Vec;
}

/**
 * How far along the chute's centerline, without a break, an animal sees from the mouth; every face is taken as solid. Any number
 * of runs and hands.
 *
 * The view of the centerline can change only where it crosses a line from the eye that grazes a wall. Those stations are found
 * exactly, in walking order, and one ray is cast to the middle of each stretch between them; the first stretch that is hidden
 * ends the seen length. Walls further on than a stretch cannot hide it. Throws where there is no chute.
 */
export function seeAhead(runs: readonly Run[]): Sight {
  const chute = runs.filter((run) => run.from !== null);
  const [first] = chute;
  if (first === undefined) throw new Error('a chute has at least one run: 0');
  const eye = curvePoint(first.path, 0);
  const walls: Curve<PlanPoint>[] = [];
  const edges: Vec[] = [];
  for (const run of chute) {
    for (const wall of [run.faces.left, run.faces.right]) {
      if (wall === null) continue;
      walls.push(wall);
      edges.push(...grazes(eye, wall));
    }
    const turns = turnsOn(run, eye, edges);
    let from = 0;
    for (const [index, turn] of [...turns, null].entries()) {
      const to = turn?.station ?? run.length;
      if (to - from <= SAME_LENGTH && turn !== null) continue;
      if (hidden(eye, curvePoint(run.path, (from + to) / 2 / run.length), walls)) {
        const before = turns[index - 1]?.graze ?? null;
        return sightTo(run, from, eye, before);
      }
      from = to;
    }
  }
  const last = chute[chute.length - 1] ?? first;
  return { ...sightTo(last, last.length, eye, null), whole: true };
}

/** The stations (from the run's start) at which a line past an edge crosses the run's centerline, in order. */
function turnsOn(run: Run, eye: PlanPoint, edges: readonly Vec[]): readonly Turn[] {
  const turns: Turn[] = [];
  for (const graze of edges) {
    const reach = distance(eye, graze);
    if (reach === 0) continue;
    const toEdge = sub(graze, eye);
    const way = { x: toEdge.x / reach, y: toEdge.y / reach };
    for (const hit of hits(eye, way, run.path)) {
      if (hit.t >= reach - SAME_LENGTH) turns.push({ station: hit.fraction * run.length, graze });
    }
  }
  return turns.sort((a, b) => a.station - b.station);
}

function hidden(eye: Vec, point: Vec, walls: readonly Curve<Vec>[]): boolean {
  const reach = distance(eye, point);
  const toPoint = sub(point, eye);
  const way = { x: toPoint.x / reach, y: toPoint.y / reach };
  return walls.some((wall) => hits(eye, way, wall).some((hit) => hit.t < reach));
}

function sightTo(run: Run, along: number, eye: PlanPoint, graze: Vec | null): Sight {
  return {
    seen: inches((run.from ?? 0) + along),
    whole: false,
    run: run.name,
    eye,
    graze: graze === null ? null : planPoint(graze.x, graze.y),
    end: curvePoint(run.path, along / run.length),
  };
}
