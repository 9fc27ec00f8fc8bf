/** What a cleated ramp is walked on: planks across it, cleats on them; and the bumper that a truck backs against. */
import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { type Ramp } from '../../layout/index.ts';
import { pieceKey, type DraftPiece } from '../draft-piece.ts';
import { type Place } from '../types.ts';
import { RAMP_PRACTICE } from './practice.ts';
import { timberName, timberWeight } from './timber.ts';

/** Where planks part along a surface, both ends included: whole ones from the foot, the last ripped to what is left. */
export function plankEdges(length: number): readonly Inches[] {
  const { wide } = RAMP_PRACTICE.plank;
  if (length < SAME_LENGTH) return [];
  const whole = Math.floor((length + SAME_LENGTH) / wide);
  const edges = Array.from({ length: whole + 1 }, (_, i) => inches(i * wide));
  const rest = length - whole * wide;
  if (rest < SAME_LENGTH) return edges;
  if (rest >= RAMP_PRACTICE.leastPlank || whole === 0) return [...edges, inches(length)];
  return [...edges.slice(0, -1), inches(length - (wide + rest) / 2), inches(length)];
}

/** A timber across the ramp. Nothing tells its two sides apart: it is listed under the left one. */
function across(ramp: Ramp, kind: 'deck' | 'cleat' | 'bumper', nth: number, size: readonly [thick: number, wide: number], place: Place): DraftPiece {
  const { width } = ramp.brief;
  const [thick, wide] = size;
  return {
    key: pieceKey(kind, ramp.name, 'left', 1, nth),
    kind,
    section: timberName(thick, wide),
    length: width,
    lengthShort: null,
    flatHeight: null,
    bend: null,
    weight: timberWeight(thick, wide, width),
    run: ramp.name,
    side: 'left',
    bay: 1,
    bays: 0,
    ends: [{ kind: 'square' }, { kind: 'square' }],
    place,
  };
}

/** Planks and cleats of a cleated ramp from the foot up, then its dock's planks, then the bumper; of a stepped one the bumper. */
export function deckPieces(ramp: Ramp): readonly DraftPiece[] {
  const { figures, brief } = ramp;
  const { plank, bumper } = RAMP_PRACTICE;
  const tall = Math.min(bumper.tall, figures.height);
  const last = across(ramp, 'bumper', 0, [bumper.thick, tall], { kind: 'bumper' });
  const { surface } = figures;
  if (surface.kind === 'stepped') return [last];
  const parts = [{ part: 'slope', edges: plankEdges(figures.slopeLength) }, { part: 'dock', edges: plankEdges(brief.dockLength) }] as const;
  let nth = 0;
  const planks = parts.flatMap(({ part, edges }) => edges.slice(1).map((to, i) => {
    const from = edges[i]!;
    return across(ramp, 'deck', nth++, [plank.thick, to - from], { kind: 'deck', part, from, to });
  }));
  const cleats = surface.cleats.map((up, i) => across(ramp, 'cleat', i, [surface.cleat, surface.cleat], { kind: 'cleat', up }));
  return [...planks, ...cleats, last];
}
