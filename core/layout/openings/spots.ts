import { inches, type Inches } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { isJambed, type Brief, type Fault, type OpeningBrief, type Side } from '../../brief/types.ts';
import { printLength } from '../../units/index.ts';
import { type FenceLine } from '../fence-line.ts';
import { type Run } from '../types.ts';

/** An opening of the brief and where its middle comes to stand on the one face, or on both. */
export interface Spot {
  readonly opening: OpeningBrief;
  readonly run: Run;
  /** From the run's start along its centerline. */
  readonly along: Inches;
  readonly places: readonly { readonly line: FenceLine; readonly u: Inches }[];
}

type Found = { readonly spot: Spot } | { readonly fault: Fault };

/** Where each opening stands; what has no fence to stand in, or lies beyond its run, is a fault. */
export function openingSpots(brief: Brief, openings: readonly OpeningBrief[], runs: readonly Run[], lines: readonly FenceLine[]): { readonly spots: readonly Spot[]; readonly faults: readonly Fault[] } {
  const found = openings.map((opening) => spotOf(brief, opening, runs, lines));
  return {
    spots: found.flatMap((one) => ('spot' in one ? [one.spot] : [])),
    faults: found.flatMap((one) => ('fault' in one ? [one.fault] : [])),
  };
}

function spotOf(brief: Brief, opening: OpeningBrief, runs: readonly Run[], lines: readonly FenceLine[]): Found {
  const own = runs.filter(({ name, from }) => (opening.run === 'chute' ? from !== null : name === opening.run));
  const lineOf = (run: Run, side: Side): FenceLine | undefined => lines.find((line) => line.run === run.name && line.side === side);
  const sides: readonly Side[] = isJambed(opening) ? [opening.side] : ['left', 'right'];
  const first = own[0];
  if (first === undefined) throw new Error(`no run ${opening.run} for ${opening.path}`);
  const missing = sides.find((side) => lineOf(first, side) === undefined);
  if (missing !== undefined) {
    const allowed = (['left', 'right'] as const).filter((side) => lineOf(first, side) !== undefined).join(', ');
    return { fault: { path: `${opening.path}.side`, code: 'fault.opening-fence', params: { side: missing, run: opening.run, allowed } } };
  }
  // A gate in the fence of one run counts along its face, all else along the centerline.
  const onFace = isJambed(opening) && opening.run !== 'chute';
  const total = own.reduce((sum, run) => sum + (onFace ? lineOf(run, sides[0]!)!.length : run.length), 0);
  if (opening.at > total + SAME_LENGTH) {
    const print = (length: number): string => printLength(inches(length), brief.units);
    return { fault: { path: `${opening.path}.at`, code: 'fault.opening-beyond', params: { at: print(opening.at), run: opening.run, length: print(total) } } };
  }
  const { run, along } = runAt(own, opening.at);
  const coped = (opening.kind === 'pen-gate' || opening.kind === 'alley-gate') && opening.hingePost !== null && lineOf(run, opening.side)?.brief.construction === 'coped';
  if (coped) return { fault: { path: `${opening.path}.hingePost`, code: 'fault.hinge-post-coped', params: { run: run.name, side: opening.side } } };
  const places = sides.map((side) => {
    const line = lineOf(run, side)!;
    return { line, u: inches(onFace ? along : (along * line.length) / run.length) };
  });
  const share = places[0]!.u / places[0]!.line.length;
  return { spot: { opening, run, along: inches(onFace ? share * run.length : along), places } };
}

/** The run on which a distance along several of them falls; a joint belongs to the run that begins there. */
function runAt(runs: readonly Run[], at: number): { readonly run: Run; readonly along: number } {
  let along = at;
  for (const [i, run] of runs.entries()) {
    if (i === runs.length - 1 || along < run.length - SAME_LENGTH) return { run, along };
    along -= run.length;
  }
  throw new Error(`no run at ${String(at)}`);
}
