import { inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { CATWALK_PRACTICE } from '../../brief/catwalk-practice.ts';
import { type Brief, type CatwalkBrief, type Fault } from '../../brief/types.ts';
import { printLength } from '../../units/index.ts';
import { LEAST_STEPS, stepFigures } from './flight.ts';
import { type Grade } from './grade.ts';

const { nearEnd, deck, bearer, bracket } = CATWALK_PRACTICE;

/**
 * Why a deck from `from` to `to` cannot be built beside a ramp: it begins or ends a hand's breadth from the dock's edge; it lies too near
 * the ground at its low end for the steel that carries it; or the steps down from its upper end would stand where the truck does. Null
 * where it can.
 */
export function slopeFault(brief: Brief, own: CatwalkBrief, { from, to }: { readonly from: number; readonly to: number }, grade: Grade, deckHeight: number): Fault | null {
  const { ramp } = grade;
  if (ramp === null) return null;
  const print = (length: number): string => printLength(inches(length), brief.units, 'inches');
  const load = ramp.brief.kind === 'load';
  for (const edge of grade.breaks) {
    for (const [field, u] of [['from', from], ['to', to]] as const) {
      if (Math.abs(u - edge) > SAME_LENGTH && Math.abs(u - edge) < nearEnd - SAME_LENGTH) {
        const params = { at: print(u), edge: print(edge), low: print(edge - nearEnd), high: print(edge + nearEnd) };
        return { path: `${own.path}.${field}`, code: 'fault.catwalk-break', params };
      }
    }
  }
  const [low, high] = load ? [from, to] : [to, from];
  const inside = load ? -SAME_LENGTH : SAME_LENGTH;
  const slope = Math.abs(grade.slope(low - inside));
  if (slope === 0) return null;
  const least = (deck.thickness + bearer.size) / Math.cos(slope) + bracket.ground + bracket.tip;
  const over = grade.height(low) + deckHeight;
  if (over < least - SAME_LENGTH) {
    const params = { over: print(over), at: print(low), least: print(Math.ceil((least - grade.height(low)) * 16) / 16) };
    return { path: `${own.path}.deckHeight`, code: 'fault.catwalk-low', params };
  }
  if (grade.slope(high + inside) === 0) return null;
  const { risers, tread } = stepFigures(grade.height(high) + deckHeight);
  const feet = risers > 1 ? risers * tread : 0;
  const past = load ? high + feet - ramp.length : feet - high;
  if (past <= SAME_LENGTH) return null;
  const params = { dock: `${ramp.brief.path}.dockLength`, at: print(high), feet: print(feet), past: print(past), least: print(LEAST_STEPS) };
  return { path: `${own.path}.${load ? 'to' : 'from'}`, code: 'fault.catwalk-truck', params };
}
