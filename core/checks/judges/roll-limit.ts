import { orderLength, type Piece } from '../../parts/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge, type Outcome } from '../outcome.ts';
import { least, limitText, meets } from '../rules/limit.ts';
import { printed } from '../words/print.ts';

/**
 * For each section that is rolled, the least axis radius and the least order length (what goes into the rolls, grips included)
 * against what the shop says its rolls take. Skins are sheet, bent round the rails as they are hung, and have no such limit.
 */
export const rollLimit: Judge = ({ brief, parts }) => {
  const sections = new Map<string, Piece[]>();
  for (const piece of parts.pieces) {
    if (piece.kind !== 'rail' || piece.bend === null) continue;
    const rolled = sections.get(piece.section);
    if (rolled === undefined) sections.set(piece.section, [piece]);
    else rolled.push(piece);
  }
  if (sections.size === 0) return none();
  return [...sections].flatMap(([section, pieces]): Outcome[] => {
    const limit = brief.shop.roll[section];
    if (limit === undefined) return [{ verdict: 'look', measured: null, where: say('where.rollUnset', { section }), at: null }];
    const tightest = leastBy(pieces, (piece) => piece.bend?.radius ?? Infinity);
    const shortest = leastBy(pieces, (piece) => piece.length);
    const radius = tightest.bend?.radius ?? 0;
    const length = orderLength(shortest.length, brief.shop.grip);
    const named = (piece: Piece, bound: number): { section: string; mark: string; run: string; least: string } =>
      ({ section, mark: piece.mark, run: piece.run, least: printed(brief, bound) });
    const overRadius = least(limit.radius);
    const overLength = least(limit.length);
    return [
      { ...judged(meets(overRadius, radius), radius, say('where.rollRadius', { ...named(tightest, limit.radius), radius: printed(brief, radius) })), limit: limitText(overRadius) },
      { ...judged(meets(overLength, length), length, say('where.rollLength', { ...named(shortest, limit.length), length: printed(brief, length) })), limit: limitText(overLength) },
    ];
  });
};

function leastBy(pieces: readonly Piece[], figure: (piece: Piece) => number): Piece {
  return pieces.reduce((best, piece) => (figure(piece) < figure(best) ? piece : best));
}
