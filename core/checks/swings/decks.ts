/** Swings against decks, and ways out that a deck stands across. */
import { curveBounds, boundsTouch, joinBounds, pointBounds } from '../../base/bounds.ts';
import { type PlanPoint, type Vec } from '../../base/points.ts';
import { GATE_PRACTICE } from '../../brief/gate-practice.ts';
import { type Catwalk, type Layout, type ManGate } from '../../layout/index.ts';
import { faceMeets, outline, type Sector } from './sector.ts';

/** A deck higher than a leaf stands off the ground is in its way; beside the leaf's own ramp off the floor there. */
const inTheWay = ({ deckHeight, highest, brief }: Catwalk, run: string): boolean =>
  (brief.run === run ? deckHeight : highest) > Math.min(GATE_PRACTICE.manGate.ground, GATE_PRACTICE.crowdGate.ground);

/** The first place where each catwalk reaches into a swing. `run`: the gate's own. */
export function decksMet({ sector, run }: { readonly sector: Sector; readonly run: string }, catwalks: readonly Catwalk[]): readonly { readonly path: string; readonly at: PlanPoint }[] {
  const bounds = joinBounds(outline(sector).map(curveBounds));
  return catwalks.filter((catwalk) => inTheWay(catwalk, run)).flatMap(({ path, stretches, flights }) => {
    const patches = [...stretches.flatMap(({ parts }) => parts.map(({ corners }) => corners)), ...flights.filter(({ length }) => length > 0).map(({ corners }) => corners)];
    for (const corners of patches) {
      if (!boundsTouch(bounds, pointBounds(corners))) continue;
      for (const [i, a] of corners.entries()) {
        const at: Vec | null = faceMeets(sector, { kind: 'line', a, b: corners[(i + 1) % corners.length]! });
        if (at !== null) return [{ path, at: at as PlanPoint }];
      }
    }
    return [];
  });
}

/** Catwalks whose deck lies behind a man gate, higher than a step. */
export const decksBehind = ({ catwalks }: Pick<Layout, 'catwalks'>, gate: ManGate, step: number): readonly Catwalk[] =>
  catwalks.filter(({ deckHeight, side, stretches }) =>
    deckHeight > step && side === gate.side && stretches.some(({ run, from, to }) => run === gate.run && gate.from < to && gate.to > from));
