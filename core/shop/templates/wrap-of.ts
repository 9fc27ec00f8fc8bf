/** The line of a cope or a mitre on the pipe's outside, laid flat. */
import { inches, type Inches } from '../../base/quantity.ts';
import { copeReach, saddleReach, slopeCopeReach } from '../../parts/index.ts';
import { type Cope, type Wrap } from './types.ts';

/** Paper below the deepest part of the cut, for it to lie square round the pipe: common practice, no source. */
export const PAPER_BELOW = inches(2);
/** Steps round the pipe in which the greatest reach of a rolled cope is looked for; between two of them it changes by less than 1e-4 in. */
const STEPS = 1440;

/** Lays a cope flat. Throws for what no piece is cut to: a branch as thick as its header, a mitre that misses a bend. */
export function wrapOf(cope: Cope): Wrap {
  if (cope.bend !== null) return rolled(cope, cope.bend);
  return cope.kind === 'saddle' ? straightSaddle(cope) : straightMitre(cope);
}

const aroundOf = (cope: Cope): Inches => inches(2 * Math.PI * cope.branch);

/** w(φ) of the geometry contract, counted from the header's axis toward the straight edge. */
function straightSaddle({ branch, header, slope }: Extract<Cope, { kind: 'saddle' }>): Wrap {
  const beta = Math.PI / 2 - slope;
  const reach = slope === 0 ? copeReach(branch, header) : slopeCopeReach(branch, header, slope);
  const edge = PAPER_BELOW + reach.short;
  return {
    around: inches(2 * Math.PI * branch),
    cutAt: (x) => edge - saddleReach(branch, header, beta, x / branch),
    low: PAPER_BELOW,
    high: inches(edge - reach.long),
    lengthEnd: inches(edge - reach.long),
  };
}

/** r·tan(angle) either way of the axis: longest a quarter of the way round, but on top where a slope breaks. */
function straightMitre(cope: Extract<Cope, { kind: 'mitre' }>): Wrap {
  const { branch, angle, lies } = cope;
  const half = branch * Math.tan(angle);
  return {
    around: aroundOf(cope),
    cutAt: (x) => PAPER_BELOW + half * (1 + (lies === 'slope' ? -Math.cos(x / branch) : Math.sin(x / branch))),
    low: PAPER_BELOW,
    high: inches(PAPER_BELOW + 2 * half),
    // A fence's rail is measured along its axis, a gate's frame to its long point.
    lengthEnd: inches(PAPER_BELOW + (lies === 'frame' ? 2 : 1) * half),
  };
}

/**
 * On a rolled pipe a line along it, φ round from the seam, is an arc of radius ρ = Rr - r·sinφ about the bend's center. `ahead` says how
 * far round the bend, from the header's axis or the axis' own end toward the piece, the cut meets that arc; what is measured along the
 * paper is ρ times the angle.
 */
function rolled(cope: Cope, bend: Inches): Wrap {
  const { branch } = cope;
  const ahead = cope.kind === 'saddle' ? saddleAhead(cope, bend) : mitreAhead(cope, bend);
  const around = aroundOf(cope);
  const rho = (x: number): number => bend - branch * Math.sin(x / branch);
  const steps = Array.from({ length: STEPS }, (_, i) => (around * i) / STEPS);
  const edge = PAPER_BELOW / (bend - branch) + Math.max(...steps.map(ahead));
  const cutAt = (x: number): number => rho(x) * (edge - ahead(x));
  const cuts = steps.map(cutAt);
  const end = cope.kind === 'saddle' ? 2 * Math.asin(copeReach(branch, cope.header).long / (2 * bend)) : 0;
  return { around, cutAt, low: inches(Math.min(...cuts)), high: inches(Math.max(...cuts)), lengthEnd: inches(bend * (edge - end)) };
}

/** Where the arc comes within the header's radius of its axis: ρ² + Rr² - 2ρRr·cosθ = p². */
function saddleAhead({ branch, header }: Extract<Cope, { kind: 'saddle' }>, bend: number): (x: number) => number {
  return (x) => {
    const side = branch * Math.sin(x / branch);
    return 2 * Math.asin(Math.sqrt((header - side) * (header + side)) / (2 * Math.sqrt((bend - side) * bend)));
  };
}

/** Where the arc crosses the upright plane through the axis' end that leans `angle` from the radius there. */
function mitreAhead({ branch, angle, long }: Extract<Cope, { kind: 'mitre' }>, bend: number): (x: number) => number {
  const [sine, cosine] = [Math.sin(angle), Math.cos(angle)];
  const least = bend - branch;
  if (!(least > bend * sine)) throw new Error(`a mitre of ${String(angle)} misses a bend of radius ${String(bend)}`);
  return (x) => {
    const radius = bend - branch * Math.sin(x / branch);
    // Along the plane from the axis' end, outward: the arc's radius from the bend's center.
    const out = Math.sqrt((radius - bend * sine) * (radius + bend * sine)) - bend * cosine;
    const beyond = Math.atan2(out * sine, bend + out * cosine);
    return long === 'outside' ? -beyond : beyond;
  };
}
