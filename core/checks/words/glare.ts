import { say, type StringKey } from '../../text/index.ts';
import { type GlareHours, type RunGlare } from '../sun/run-glare.ts';

/** A time of day as a wall clock has it: 07:05. */
export const clockText = (minute: number): string => `${String(Math.floor(minute / 60)).padStart(2, '0')}:${String(minute % 60).padStart(2, '0')}`;

const monthText = (month: number): string => say(`month.${String(month)}` as StringKey);

/** Months with the same hours are said together: `Oct, Nov 07:00 to 08:40`. */
export function glareWords({ hours, least }: Pick<RunGlare, 'hours' | 'least'>): string {
  if (least === null) return say('where.glareNoLow');
  if (hours.length === 0) return say('where.glareNone');
  const months = [...new Set(hours.map(({ month }) => month))];
  const groups = new Map<string, number[]>();
  for (const month of months) {
    const words = hours.filter((one) => one.month === month).map(stretchText).join(say('where.glareAnd'));
    groups.set(words, [...(groups.get(words) ?? []), month]);
  }
  return [...groups].map(([words, of]) => say('where.glareMonths', { months: of.map(monthText).join(', '), hours: words })).join('; ');
}

/** One look at the sun is said as that time alone. */
const stretchText = ({ from, to }: GlareHours): string => (from === to ? clockText(from) : say('where.glareHours', { from: clockText(from), to: clockText(to) }));
