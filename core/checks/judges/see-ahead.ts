import { say } from '../../text/index.ts';
import { judged, type Judge } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { seeAhead } from '../sight/see-ahead.ts';
import { printed } from '../words/print.ts';

/** Measured: body lengths of the chute's centerline that an animal at the mouth sees without a break, every face solid. */
export const seesAhead: Judge = ({ brief, layout }) => {
  const sight = seeAhead(layout.runs);
  const bodies = sight.seen / brief.cattle.bodyLength;
  const seen = printed(brief, sight.seen);
  const where = sight.whole ? say('where.seesAll', { seen }) : say('where.sees', { run: sight.run, station: seen });
  return [judged(meets(rules['see-ahead'].limit, bodies), bodies, where, sight.end)];
};
