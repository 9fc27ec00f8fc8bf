/** Two things in one place: what the layout found. */
import { type Foul } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge } from '../outcome.ts';
import { printedPoint, printedSmall } from '../words/print.ts';

/** One outcome for each pair of runs. Measured: places between the two; 0 where there is none. */
export const fouls = (kind: Exclude<Foul['kind'], 'post-line-offset' | 'foul-opening'>): Judge => ({ brief, layout }) => {
  const found = layout.fouls.filter((foul) => foul.kind === kind);
  if (found.length === 0) return [judged(true, 0, say('where.nowhere'))];
  return found.map((foul) => {
    const place = { runs: runsOf(foul), ...printedPoint(brief, foul.at) };
    if (kind === 'foul-post') return judged(false, 1, say('where.foulPost', { ...place, near: printedSmall(brief, foul.measured) }), foul.at);
    if (foul.deck !== undefined) {
      const other = foul.deck.other ?? runOf(foul);
      return judged(false, foul.measured, say('where.foulDeck', { deck: foul.deck.path, other, ...place }), foul.at);
    }
    return judged(false, foul.measured, say('where.foul', place), foul.at);
  });
};

/** Each opening that lies over the end of its run or over another. Measured: by how much. */
export const openingFouls: Judge = ({ brief, layout }) => {
  if (brief.openings.length + brief.holdingPens.length === 0) return none();
  const found = layout.fouls.filter((foul) => foul.kind === 'foul-opening');
  if (found.length === 0) return [judged(true, 0, say('where.nowhere'))];
  return found.map((foul) => {
    const { path, other } = foul.openings!;
    const params = { opening: path, run: foul.runs[0]!, by: printedSmall(brief, foul.measured), ...printedPoint(brief, foul.at) };
    const where = other === null ? say('where.foulRunEnd', params) : say('where.foulOpening', { ...params, other });
    return judged(false, foul.measured, where, foul.at);
  });
};

const runOf = ({ runs }: Foul): string => runs[runs.length - 1] ?? '';

function runsOf(foul: Foul): string {
  const [first = '', second = first] = foul.runs;
  return first === second ? first : say('where.runs', { first, second });
}
