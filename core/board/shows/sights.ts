/** The lines along which an animal at the mouth looks. */
import { viewPoint } from '../../base/points.ts';
import { PENS } from '../../drafting/kit.ts';
import { sightLines } from '../sight-lines.ts';
import { type Contributor } from './show.ts';

export const sights: Contributor = ({ input: { brief, layout }, options }) => {
  if (!options.sights) return {};
  return {
    lines: sightLines(brief, layout).map(({ from, to }) => (
      { kind: 'curve', curve: { kind: 'line', a: viewPoint(from.x, from.y), b: viewPoint(to.x, to.y) }, pen: PENS.note })),
  };
};
