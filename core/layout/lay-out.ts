import { planPoint } from '../base/points.ts';
import { radians } from '../base/quantity.ts';
import { type Brief, type Fault } from '../brief/types.ts';
import { deckFouls } from './catwalks/deck-fouls.ts';
import { standCatwalks } from './catwalks/stand-catwalks.ts';
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
import { openingSpots, type Spot } from './openings/spots.ts';
import { standOpenings } from './openings/stand.ts';
import { sortOpenings } from '../brief/sort-openings.ts';
import { RETURN_GATE, returnGate } from '../brief/holding-gate.ts';
import { standHoldingGate } from './pens/holding-gate.ts';
import { returnWay } from './pens/return-runs.ts';
import { chainEnds, spanFences, withLoose } from './spans.ts';
import { type Layout } from './types.ts';
import { roofCorners } from './yard/roof-corners.ts';

export type LayoutResult =
  | { readonly ok: true; readonly layout: Layout }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Sets out a brief: path, fences, posts, closing plates, and what fouls what. Pure: the same brief gives the same layout.
 * What cannot be set out is a list of faults; what can, but should not be built so, is among the layout's fouls.
 */
export function layOut(brief: Brief): LayoutResult {
  const setOut = setOutRuns(brief);
  const main = fenceLines(brief, setOut);
  const asides = new Set(setOut.runs.filter((run) => run.aside).map((run) => run.name));
  const chains = chainFences(main.filter((line) => !asides.has(line.run)), brief.crowdPen.hand);
  const wedge = radians(brief.crowdPen.funnelAngle + Math.PI - brief.crowdPen.sweep);
  const away = (run: string): boolean => run.startsWith('return-') || onRamp(brief, run);
  const gates = brief.returnAlley === null ? [] : [returnGate(brief.returnAlley)];
  const first = openingSpots(brief, [...brief.openings.filter(({ run }) => !away(run)), ...sortOpenings(brief.sortPens), ...setOut.holdingPens.map(standHoldingGate), ...gates], setOut.runs, main);
  const leaves = first.spots.find(({ opening }) => opening.path === RETURN_GATE);
  const back = brief.returnAlley === null || leaves === undefined ? { runs: [], lines: [] } : returnWay(brief, brief.returnAlley, leaves);
  const second = leaves === undefined ? { spots: [], faults: [] } : openingSpots(brief, brief.openings.filter(({ run }) => run.startsWith('return-')), back.runs, back.lines);
  const lines = [...main, ...back.lines];
  const faults = [...buildFaults(brief, lines), ...pivotFaults(brief, chains, wedge), ...first.faults, ...second.faults];
  if (faults.length > 0) return { ok: false, faults };

  const lastAlley = chains.alley[chains.alley.length - 1]!;
  const gaps = { alley: pivotGap(lastAlley.section, wedge), funnel: pivotGap(chains.funnel.section, wedge) };
  const found = findCorners(chains, gaps.funnel);
  if (!found.ok) return found;
  const ended = withLoose(chainEnds(chains, gaps, found.corners), [
    ...main.filter((line) => asides.has(line.run)).map((line) => [line]),
    ...(['left', 'right'] as const).map((side) => back.lines.filter((line) => line.side === side)),
  ]);
  const fitted = fitOpenings([...first.spots, ...second.spots], (line) => ended.ends.get(line)!);
  const spanned = spanFences(ended, fitted.cuts);
  const walked = lines.map((line) => spanned.fences.get(line)!);
  const pivot = planPoint(0, 0);
  const standing = placePosts(brief, lines, spanned, pivot);
  const roof = roofCorners(brief, setOut.runs);
  const added = setOutRamps(brief, walked, standing, roof);
  const fences = [...walked, ...added.fences];
  if (added.faults.length > 0) return { ok: false, faults: added.faults };
  const short = [...bayFaults(brief, fences), ...rowFaults(brief, added)];
  if (short.length > 0) return { ok: false, faults: short };
  const runs = [...setOut.runs, ...back.runs, ...added.ramps.map((ramp) => ramp.run)];
  const stood = standCatwalks(brief, runs, fences, added.ramps);
  if (stood.faults.length > 0) return { ok: false, faults: stood.faults };

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
      holdingPens: setOut.holdingPens,
      openings: standOpenings(brief, inOrder(brief, [...fitted.spots, ...added.spots]), fences),
      catwalks: stood.catwalks,
      crowdGate: standCrowdGate(brief, fences),
      roof,
      pivot,
      mouth: setOut.mouth,
      mouthDistance: setOut.mouthDistance,
      funnelLength: setOut.funnelLength,
      pivotWedge: wedge,
      pivotGap: gaps,
      fouls: [
        ...findFouls({ runs, fences, joins, posts }),
        ...deckFouls(stood.catwalks, { fences, joins, posts: posts.filter(({ kind }) => kind === 'pivot-post') }),
        ...fitted.fouls,
        ...added.fouls,
      ],
    },
  };
}

const onRamp = (brief: Brief, run: string): boolean => brief.ramps.some(({ name }) => name === run);

/** As the brief has them, the gates of the holding pens after its own openings. */
function inOrder({ openings }: Brief, spots: readonly Spot[]): readonly Spot[] {
  const place = new Map(openings.map(({ path }, i) => [path, i]));
  const at = ({ opening }: Spot): number => place.get(opening.path) ?? openings.length;
  return spots.toSorted((a, b) => at(a) - at(b));
}
