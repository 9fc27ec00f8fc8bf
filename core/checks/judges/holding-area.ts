import { penArea } from '../../layout/index.ts';
import { say } from '../../text/index.ts';
import { judged, none, type Judge } from '../outcome.ts';
import { rules } from '../rules/table.ts';
import { printed, printedArea } from '../words/print.ts';
import { cattleClass } from './cattle-class.ts';

/** Clear area of each holding pen for each of the head that it is for, square feet. */
export const holdingArea: Judge = ({ brief, layout }) => {
  if (layout.holdingPens.length === 0) return none();
  const least = rules['holding-area'].limit.values[cattleClass(brief)];
  return layout.holdingPens.map((pen) => {
    const { name, head, length, width } = pen.brief;
    const area = penArea(pen);
    const each = area / 144 / head;
    const where = say('where.holdingPen', { run: name, length: printed(brief, length), width: printed(brief, width), area: printedArea(brief, area), head });
    return { ...judged(each >= least, each, where, pen.middle), limit: say('limit.least', { value: least }) };
  });
};
