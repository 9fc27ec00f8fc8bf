import { say } from '../../text/index.ts';
import { judged, type Judge } from '../outcome.ts';
import { least, limitText, meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { groupFences } from '../words/fence-groups.ts';
import { printed } from '../words/print.ts';

/** One outcome for each height that stands; gentle or flighty as the brief says. */
export const fenceHeight: Judge = ({ brief, layout }) => {
  const { gentle, flighty } = rules['fence-height'].limit.values;
  const limit = least(brief.cattle.flighty ? flighty : gentle);
  return groupFences(layout.fences, (fence) => fence.brief.height).map(({ first, names }) => {
    const { height } = first.brief;
    const where = say('where.height', { fences: names, height: printed(brief, height) });
    return { ...judged(meets(limit, height), height, where), limit: limitText(limit) };
  });
};
