/** Swings against walls, decks, over the edges of docks, and against one another. A backstop slides between its own posts: it meets no deck. */
import { curvePoint, type Curve } from '../../base/curve.ts';
import { faceCurve, rampParts, type Fence, type Layout } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { type PlanPoint } from '../../base/points.ts';
import { judged, type Judge, type Outcome } from '../outcome.ts';
import { faceMeets, sectorsMeet } from '../swings/sector.ts';
import { rules } from '../rules/table.ts';
import { decksBehind, decksMet } from '../swings/decks.ts';
import { swingsOf, type Swinging } from '../swings/swings.ts';
import { printed, printedPoint } from '../words/print.ts';

/**
 * Each foul by itself. A man gate behind which a deck stands higher than a step is no way out: a foul too.
 * A man gate that opens into the crowd gate's sweep is none: it stands shut by its spring. But it can't be opened
 * while the crowd gate stands before it, so a person looks. A latched gate may be left open, so there it is one.
 */
export const swingFoul: Judge = ({ brief, layout }) => {
  const swings = swingsOf(layout);
  const found: Outcome[] = [];
  const tell = (key: 'where.swingWall' | 'where.swingEdge' | 'where.swingDeck' | 'where.swingGate' | 'where.swingCrowd', one: Swinging, other: string, at: PlanPoint): void => {
    const where = say(key, { gate: nameOf(one), other, ...printedPoint(brief, at) });
    found.push(key === 'where.swingCrowd' ? { verdict: 'look', measured: 0, where, at } : judged(false, 1, where, at));
  };
  for (const one of swings) {
    for (const { fence, at } of wallsMet(one, layout.fences)) tell('where.swingWall', one, say('where.side', { run: fence.run, side: fence.side }), at);
  }
  for (const { one, ramp, at } of edgesMet(swings, layout)) tell('where.swingEdge', one, ramp, at);
  for (const one of swings) for (const { path, at } of decksMet(one, layout.catwalks)) tell('where.swingDeck', one, path, at);
  for (const gate of layout.openings) {
    if (gate.kind !== 'man-gate') continue;
    for (const { path, deckHeight } of decksBehind(layout, gate, rules['stair-rise'].limit.values.riser)) {
      found.push(judged(false, 1, say('where.gateBehindDeck', { gate: gate.path, other: path, deck: printed(brief, deckHeight) }), gate.at));
    }
  }
  swings.forEach((one, i) => {
    for (const other of swings.slice(i + 1)) {
      const at = sectorsMeet(one.sector, other.sector);
      if (at === null) continue;
      if (one.kind === 'crowd-gate' && other.kind === 'man-gate') tell('where.swingCrowd', other, nameOf(one), at as PlanPoint);
      else tell('where.swingGate', one, nameOf(other), at as PlanPoint);
    }
  });
  if (layout.crowdGate.rest === null) found.push(judged(false, 1, say('where.noRest'), layout.pivot));
  return found.length > 0 ? found : [judged(true, 0, say('where.swingsClear', { count: swings.length }))];
};

const nameOf = ({ kind, path }: Swinging): string => (kind === 'crowd-gate' ? say('where.crowdGate') : path);

/** Fences whose face, openings left out, reaches into a swing. */
function wallsMet(one: Swinging, fences: readonly Fence[]): readonly { readonly fence: Fence; readonly at: PlanPoint }[] {
  return fences.flatMap((fence) => {
    for (const span of fence.spans) {
      const at = faceMeets(one.sector, faceCurve(fence, span.skinFrom, span.skinTo, 0));
      if (at !== null) return [{ fence, at: at as PlanPoint }];
    }
    return [];
  });
}

/** Leaves that swing over the edge of a dock: its far end, or where its slope begins. What opens on the dock must stay over it. */
function edgesMet(swings: readonly Swinging[], { ramps }: Layout): readonly { readonly one: Swinging; readonly ramp: string; readonly at: PlanPoint }[] {
  return ramps.flatMap((ramp) => {
    const { left, right } = ramp.run.faces;
    if (left === null || right === null) return [];
    const shares = [0, ...rampParts(ramp).map(({ to }) => to / ramp.length)];
    const edges = shares.map((share): Curve<PlanPoint> => ({ kind: 'line', a: curvePoint(left, share), b: curvePoint(right, share) }));
    return swings.flatMap((one) => {
      const at = edges.map((edge) => faceMeets(one.sector, edge)).find((place) => place !== null);
      return at === undefined ? [] : [{ one, ramp: ramp.name, at: at as PlanPoint }];
    });
  });
}
