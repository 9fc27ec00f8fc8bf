import { say } from '../../text/index.ts';
import { printWeight } from '../../units/index.ts';
import { judged, none, type Judge } from '../outcome.ts';
import { limitText, meets, near } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';
import { printed, printedSmall } from '../words/print.ts';
import { cattleClass, isLarge, type CattleClass } from './cattle-class.ts';

const BASE = {
  calf: rules['chute-width-600'].limit,
  yearling: rules['chute-width-yearling'].limit,
  mature: rules['chute-width-mature'].limit,
} as const satisfies Record<CattleClass, { of: number; by: number }>;

const EXTRA = rules['chute-width-large'].limit.values.add;

/**
 * The width for one class of cattle; a brief of another class has no subject. Over 1200 lb the width aimed at is wider by what
 * `chute-width-large` adds.
 */
export const chuteWidth = (kind: CattleClass): Judge => ({ brief, layout }) => {
  if (cattleClass(brief) !== kind) return none();
  const { width } = brief.chute;
  const limit = isLarge(brief) ? near(BASE[kind].by, BASE[kind].of + EXTRA) : BASE[kind];
  const where = say('where.width', { width: printed(brief, width), weight: printWeight(brief.cattle.weight, brief.units) });
  return [{ ...judged(meets(limit, width), width, where, layout.mouth), limit: limitText(limit) }];
};

/** Measured: inches over the width of the class in the brief. */
export const chuteWidthLarge: Judge = ({ brief, layout }) => {
  if (!isLarge(brief)) return none();
  const { width } = brief.chute;
  const base = BASE[cattleClass(brief)].of;
  const extra = width - base;
  const where = say('where.widthLarge', {
    width: printed(brief, width),
    weight: printWeight(brief.cattle.weight, brief.units),
    extra: printedSmall(brief, extra),
    base: printed(brief, base),
  });
  return [judged(meets({ is: 'least', value: EXTRA }, extra), extra, where, layout.mouth)];
};
