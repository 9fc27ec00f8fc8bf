import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, inches, radians } from '../../../core/base/quantity.ts';
import { CURVE_TOLERANCE, sampleWrap, wrapOf, type Cope } from '../../../core/shop/templates/index.ts';

/** A point of space: the header stands along z through the origin. */
interface Spot { readonly x: number; readonly y: number; readonly z: number }
type Saddle = Extract<Cope, { kind: 'saddle' }>;
type Mitre = Extract<Cope, { kind: 'mitre' }>;

const saddle = (branch: number, header: number, slope: number, bend: number | null): Saddle =>
  ({ kind: 'saddle', branch: inches(branch), header: inches(header), slope: degrees(slope), bend: bend === null ? null : inches(bend) });
const mitre = (branch: number, angle: number, lies: Mitre['lies'], bend: number | null, long: Mitre['long']): Mitre =>
  ({ kind: 'mitre', branch: inches(branch), angle: degrees(angle), lies, bend: bend === null ? null : inches(bend), long });

/** The paper wrapped back round its pipe: a point of it that lies y from the straight edge, when that edge stands `edge` from the origin along the axis. */
function wrapped({ branch, slope, bend }: { branch: number; slope: number; bend: number | null }, x: number, y: number, edge: number): Spot {
  const turn = x / branch;
  if (bend !== null) {
    // The axis is a level circle through the origin, its center at (0, bend): toward the inside is +y. Underneath is where the seam lies.
    const radius = bend - branch * Math.sin(turn);
    const round = edge / bend - y / radius;
    return { x: radius * Math.sin(round), y: bend - radius * Math.cos(round), z: -branch * Math.cos(turn) };
  }
  // A rail that climbs away from its lower post: the seam lies underneath, on the obtuse side.
  const along = edge - y;
  const up = -branch * Math.cos(turn);
  return { x: along * Math.cos(slope) - up * Math.sin(slope), y: branch * Math.sin(turn), z: along * Math.sin(slope) + up * Math.cos(slope) };
}

/** Gaps between the cut and the header's surface all round when the piece is pushed up to it along its axis until it touches. */
function gaps(cope: Saddle): { readonly most: number; readonly edge: number } {
  const cut = dense(cope);
  const nearest = (edge: number): number => Math.min(...cut.map(({ x, y }) => off(wrapped(cope, x, y, edge), cope.header)));
  // With its foremost point at the header's axis it is well inside.
  let [touching, clear] = [Math.max(...cut.map(({ y }) => y)), 40];
  for (let i = 0; i < 60; i++) {
    const middle = (touching + clear) / 2;
    if (nearest(middle) > 0) clear = middle;
    else touching = middle;
  }
  return { most: Math.max(...cut.map(({ x, y }) => Math.abs(off(wrapped(cope, x, y, clear), cope.header)))), edge: clear };
}

const off = ({ x, y }: Spot, radius: number): number => Math.hypot(x, y) - radius;

/** The printed line, its straight pieces looked at within too. */
function dense(cope: Cope): readonly { x: number; y: number }[] {
  const points = sampleWrap(wrapOf(cope));
  return points.slice(1).flatMap((b, i) => [0, 1 / 3, 2 / 3].map((f) => ({ x: points[i]!.x + (b.x - points[i]!.x) * f, y: points[i]!.y + (b.y - points[i]!.y) * f })));
}

const aSaddle = fc.record({
  branch: fc.double({ min: 0.4, max: 3.5, noNaN: true }),
  over: fc.double({ min: 1.005, max: 4, noNaN: true }),
  slope: fc.oneof(fc.constant(0), fc.double({ min: 1, max: 35, noNaN: true })),
  bend: fc.oneof(fc.constant(null), fc.double({ min: 60, max: 1240, noNaN: true })),
}).map(({ branch, over, slope, bend }) => saddle(branch, branch * over, bend === null ? slope : 0, bend));

describe('a cope cut from its template', () => {
  it('fits its header within 1/32 in all round, at any size, angle and bend', () => {
    let worst = 0;
    fc.assert(fc.property(aSaddle, (cope) => {
      const { most } = gaps(cope);
      worst = Math.max(worst, most);
      expect(most).toBeLessThan(1 / 32);
    }), { seed: 20260302, numRuns: 300 });
    // What is left is the straight pieces of the line alone, on a slope that lies flat on its pipe.
    expect(worst).toBeLessThan(5 * CURVE_TOLERANCE);
  });

  it('would not, were its line a 16th off or turned by a 16th of the way round', () => {
    const cope = saddle(1.1875, 1.4375, 20, null);
    const { edge } = gaps(cope);
    const cut = dense(cope);
    const wrong = (shift: (x: number, y: number) => [number, number]): number =>
      Math.max(...cut.map(({ x, y }) => { const [a, b] = shift(x, y); return Math.abs(off(wrapped(cope, a, b, edge), cope.header)); }));
    expect(wrong((x, y) => [x, y + (x > 2 && x < 4 ? 1 / 16 : 0)])).toBeGreaterThan(1 / 32);
    expect(wrong((x, y) => [x + (Math.PI * 2 * 1.1875) / 16, y])).toBeGreaterThan(1 / 32);
  });

  it('has its length end where the piece list says: the long point, sqrt(p² - r²) = 0.8101 from the post of the worked values', () => {
    const cope = saddle(2.375 / 2, 2.875 / 2, 0, null);
    expect(gaps(cope).edge - wrapOf(cope).lengthEnd).toBeCloseTo(0.8101, 2);
    // On a bend the axis point at that distance lies 2·asin(q / 2Rr) round it.
    const bent = saddle(2.375 / 2, 2.875 / 2, 0, 145.2921);
    expect(gaps(bent).edge - wrapOf(bent).lengthEnd).toBeCloseTo(145.2921 * 2 * Math.asin(0.8101 / (2 * 145.2921)), 2);
  });
});

describe('the line of a saddle', () => {
  it('has the cut-backs of the geometry contract\'s worked values, 2 in on 2 1/2 in, square on', () => {
    const wrap = wrapOf(saddle(2.375 / 2, 2.875 / 2, 0, null));
    for (const [phi, back] of [[0, 0.6274], [22.5, 0.5537], [45, 0.3567], [67.5, 0.1188], [90, 0]] as const) {
      for (const turned of [phi, 180 - phi, 180 + phi, 360 - phi]) expect(wrap.high - wrap.cutAt((wrap.around * turned) / 360)).toBeCloseTo(back, 4);
    }
    expect(wrap.around).toBeCloseTo(Math.PI * 2.375, 12);
  });

  it('has at 70° the reaches of the worked values, 1.0975 at 0 and 1.9620 at 180°', () => {
    const cope = saddle(2.375 / 2, 2.875 / 2, 20, null);
    const wrap = wrapOf(cope);
    // Two figures of four places each.
    expect(Math.abs(wrap.cutAt(0) - wrap.cutAt(wrap.around / 2) - (1.962 - 1.0975))).toBeLessThan(1e-4);
    expect(gaps(cope).edge - wrap.cutAt(0)).toBeCloseTo(1.0975, 2);
  });
});

describe('the line of a mitre', () => {
  const aMitre = fc.record({
    branch: fc.double({ min: 0.4, max: 3.5, noNaN: true }), angle: fc.double({ min: 0.5, max: 55, noNaN: true }),
    bend: fc.oneof(fc.constant(null), fc.double({ min: 60, max: 1240, noNaN: true })), long: fc.constantFrom('inside' as const, 'outside' as const),
  }).map(({ branch, angle, bend, long }) => mitre(branch, angle, 'level', bend, bend === null ? null : long));

  it('lies in a plane when it is wrapped, and that leans by its angle', () => {
    fc.assert(fc.property(aMitre, (cope) => {
      const wrap = wrapOf(cope);
      // The axis' own end at the origin: the plane is upright through it.
      const at = (x: number, y: number): Spot => wrapped({ ...cope, slope: 0 }, x, y, wrap.lengthEnd);
      const toward = cope.long === 'outside' ? 1 : -1;
      for (const { x, y } of dense(cope)) {
        const spot = at(x, y);
        // Beyond the axis' end is -x. The long point lies toward +y (a quarter of the way round, the bend's inside), or away from it.
        expect(Math.abs(spot.x * Math.cos(cope.angle) - toward * spot.y * Math.sin(cope.angle))).toBeLessThan(2 * CURVE_TOLERANCE);
      }
    }), { seed: 20260302, numRuns: 200 });
  });

  it('is longest on top where a slope breaks, and in the frame\'s plane of a gate is measured to its long point', () => {
    const slope = wrapOf(mitre(1.1875, 10, 'slope', null, null));
    expect(slope.cutAt(slope.around / 2)).toBeCloseTo(slope.high, 12);
    expect(slope.high - slope.low).toBeCloseTo(2.375 * Math.tan(radians(Math.PI / 18)), 12);
    expect(slope.lengthEnd).toBeCloseTo((slope.high + slope.low) / 2, 12);
    const frame = wrapOf(mitre(0.95, 45, 'frame', null, null));
    expect(frame.lengthEnd).toBeCloseTo(frame.high, 12);
    expect(frame.high - frame.low).toBeCloseTo(1.9, 12);
  });
});
