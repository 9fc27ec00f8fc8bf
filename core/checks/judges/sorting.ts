/** What follows the squeeze. */
import { say } from '../../text/index.ts';
import { judged, none, type Judge } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';

/** Counted: the sort gates that stand. Without a squeeze pad or a sort pen there is nothing downstream to divert to. */
export const sortGate: Judge = ({ brief, layout }) => {
  if (brief.squeezePad === null && brief.sortPens.length === 0) return none();
  const gates = layout.openings.filter((one) => one.kind === 'pen-gate' && one.sorts);
  const names = (list: readonly { readonly path: string }[]): string => list.map(({ path }) => path).join(', ');
  const where = brief.sortPens.length === 0 ? say('where.noSortGate')
    : gates.length === 0 ? say('where.sortGateOut', { names: names(brief.sortPens) })
      : say('where.sortGates', { count: gates.length, names: names(gates) });
  return [judged(meets(rules['sort-gate'].limit, gates.length), gates.length, where, gates[0]?.at ?? null)];
};
