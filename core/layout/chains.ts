import { otherSide, type Side } from '../brief/types.ts';
import { type FenceLine } from './fence-line.ts';
import { penPartOf } from './yard/pen-runs.ts';

/** Fences that follow one another in line, in walking order: one post serves both where two of them join. */
export interface Chains {
  /** Past the pen: alley, crowd pen, junction, chute and what follows it. */
  readonly outer: readonly FenceLine[];
  /** The alley's side that ends at the pivot post. */
  readonly alley: readonly FenceLine[];
  readonly funnel: FenceLine;
  /** The chute's side that begins at the corner with the funnel, and what follows it. */
  readonly chute: readonly FenceLine[];
  /** Round each sort pen, from its start to its end. */
  readonly pens: readonly (readonly FenceLine[])[];
}

/** Sorts the fences into what follows what. `hand` is the crowd pen's. Throws where the funnel is missing: a programmer's mistake. */
export function chainFences(lines: readonly FenceLine[], hand: Side): Chains {
  const walked = lines.filter((line) => penPartOf(line.run) === null);
  const outer = walked.filter((line) => line.side === otherSide(hand));
  const inner = walked.filter((line) => line.side === hand);
  const at = inner.findIndex((line) => line.run === 'junction');
  const funnel = inner[at];
  if (funnel === undefined) throw new Error(`no funnel on the ${hand} side of the junction`);
  return { outer, alley: inner.slice(0, at), funnel, chute: inner.slice(at + 1), pens: penChains(lines) };
}

function penChains(lines: readonly FenceLine[]): readonly (readonly FenceLine[])[] {
  const pens = new Map<string, FenceLine[]>();
  for (const line of lines) {
    const pen = penPartOf(line.run)?.pen;
    if (pen === undefined) continue;
    const known = pens.get(pen);
    if (known === undefined) pens.set(pen, [line]);
    else known.push(line);
  }
  return [...pens.values()];
}
