import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH, TAPE } from '../../base/tolerance.ts';
import { type Brief, type CatwalkBrief, type Fault } from '../../brief/types.ts';
import { printLength } from '../../units/index.ts';
import { type Fence, type Run } from '../types.ts';

/** A catwalk of the brief and the stretches of fence that it follows, in walking order. */
export interface CatwalkSpot {
  readonly brief: CatwalkBrief;
  readonly stretches: readonly { readonly fence: Fence; readonly from: Inches; readonly to: Inches }[];
}

type Found = { readonly spot: CatwalkSpot } | { readonly fault: Fault };

/** Where each catwalk of the brief lies; one with no fence beside it, or that goes beyond its run, is a fault. */
export function catwalkSpots(brief: Brief, runs: readonly Run[], fences: readonly Fence[]): { readonly spots: readonly CatwalkSpot[]; readonly faults: readonly Fault[] } {
  const found = brief.catwalks.map((catwalk) => spotOf(brief, catwalk, runs, fences));
  return {
    spots: found.flatMap((one) => ('spot' in one ? [one.spot] : [])),
    faults: found.flatMap((one) => ('fault' in one ? [one.fault] : [])),
  };
}

function spotOf(brief: Brief, catwalk: CatwalkBrief, runs: readonly Run[], fences: readonly Fence[]): Found {
  const { run: name, side, from, path } = catwalk;
  const chute = name === 'chute';
  const own = runs.filter((run) => (chute ? run.from !== null : run.name === name));
  const of = (run: Run): Fence | undefined => fences.find((fence) => fence.run === run.name && fence.side === side);
  const beside = own.flatMap((run) => {
    const fence = of(run);
    return fence === undefined ? [] : [{ fence, counted: chute ? run.length : fence.length }];
  });
  if (beside.length === 0) {
    const allowed = (['left', 'right'] as const).filter((one) => fences.some((fence) => fence.side === one && own.some((run) => run.name === fence.run))).join(', ');
    return { fault: { path: `${path}.side`, code: 'fault.opening-fence', params: { side, run: name, allowed } } };
  }
  const total = beside.reduce((sum, { counted }) => sum + counted, 0);
  const to = catwalk.to ?? total;
  const print = (length: number): string => printLength(inches(length), brief.units);
  if (to > total + TAPE) return { fault: { path: `${path}.to`, code: 'fault.catwalk-beyond', params: { to: print(to), run: name, length: print(total) } } };
  if (from >= total - SAME_LENGTH) return { fault: { path: `${path}.from`, code: 'fault.catwalk-start', params: { from: print(from), run: name, length: print(total) } } };
  let before = 0;
  const stretches = beside.flatMap(({ fence, counted }) => {
    const share = fence.length / counted;
    const [a, b] = [Math.max(0, from - before), Math.min(counted, to - before)];
    before += counted;
    return b - a > SAME_LENGTH ? [{ fence, from: inches(a * share), to: inches(b === counted ? fence.length : b * share) }] : [];
  });
  return { spot: { brief: catwalk, stretches } };
}
