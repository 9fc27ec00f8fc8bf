import { planPoint } from '../base/points.ts';
import { radians } from '../base/quantity.ts';
import { type Brief, type Fault } from '../brief/types.ts';
import { chainFences } from './chains.ts';
import { findCorners } from './corners.ts';
import { closingPlates } from './closing-plates.ts';
import { bayFaults, buildFaults, pivotFaults } from './faults.ts';
import { fenceLines } from './fence-line.ts';
import { findFouls } from './fouls/index.ts';
import { fenceJoins } from './fouls/join.ts';
import { pivotGap } from './pivot-gap.ts';
import { placePosts } from './posts.ts';
import { setOutRuns } from './set-out-runs.ts';
import { rowFaults } from './ramps/row-faults.ts';
import { setOutRamps } from './ramps/set-out-ramps.ts';
import { standCrowdGate } from './openings/crowd-gate.ts';
import { fitOpenings } from './openings/fit.ts';
import { openingSpots } from './openings/spots.ts';
import { standOpenings } from './openings/stand.ts';
import { chainEnds, spanFences } from './spans.ts';
import { type Layout } from './types.ts';

export type LayoutResult =
  | { readonly ok: true; readonly layout: Layout }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Sets out a brief: path, fences, posts, closing plates, and what fouls what. Pure: the same brief gives the same layout.
 * What cannot be set out is a list of faults; what can, but should not be built so, is among the layout's fouls.
 */
export function layOut(brief: Brief): LayoutResult {
  const setOut = setOutRuns(brief);
  const lines = fenceLines(brief, setOut);
  const chains = chainFences(lines, brief.crowdPen.hand);
  const wedge = radians(brief.crowdPen.funnelAngle + Math.PI - brief.crowdPen.sweep);
  const faults = [...buildFaults(brief, lines), ...pivotFaults(brief, chains, wedge)];
  const { spots, faults: misplaced } = openingSpots(brief, setOut.runs, lines);
  faults.push(...misplaced);
  if (faults.length > 0) return { ok: false, faults };

  const lastAlley = chains.alley[chains.alley.length - 1]!;
  const gaps = { alley: pivotGap(lastAlley.section, wedge), funnel: pivotGap(chains.funnel.section, wedge) };
  const found = findCorners(chains, gaps.funnel);
  if (!found.ok) return found;
  const ended = chainEnds(chains, gaps, found.corners);
  const fitted = fitOpenings(spots, (line) => ended.ends.get(line)!);
  const spanned = spanFences(ended, fitted.cuts);
  const walked = lines.map((line) => spanned.fences.get(line)!);
  const pivot = planPoint(0, 0);
  const standing = placePosts(brief, lines, spanned, pivot);
  const added = setOutRamps(brief, walked, standing);
  const fences = [...walked, ...added.fences];
  const short = [...bayFaults(brief, fences), ...rowFaults(brief, added)];
  if (short.length > 0) return { ok: false, faults: short };

  const runs = [...setOut.runs, ...added.ramps.map((ramp) => ramp.run)];
  const posts = [...standing, ...added.posts];
  const joins = fenceJoins(lines, spanned);
  return {
    ok: true,
    layout: {
      runs,
      fences,
      posts,
      closingPlates: closingPlates(brief, spanned.fences.get(lastAlley)!, spanned.fences.get(chains.funnel)!),
      ramps: added.ramps,
      openings: standOpenings(brief, fitted.spots, fences),
      crowdGate: standCrowdGate(brief, fences),
      pivot,
      mouth: setOut.mouth,
      mouthDistance: setOut.mouthDistance,
      funnelLength: setOut.funnelLength,
      pivotWedge: wedge,
      pivotGap: gaps,
      fouls: [...findFouls({ runs, fences, joins, posts }), ...fitted.fouls],
    },
  };
}
