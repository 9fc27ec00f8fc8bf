import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { arcCheck, arcThrough, linearTolerance } from '../../core/shop/index.ts';
import { runArcCheck } from '../../electron/command/run-arc-check.ts';

const measure = (radius: number, chord: number) => ({
  chord: inches(chord), rise: inches(radius - Math.sqrt(radius ** 2 - (chord / 2) ** 2)), read: inches(1 / 32), grade: 'B' as const,
});
const anArc = fc.record({ radius: fc.double({ min: 60, max: 1240, noNaN: true }), share: fc.double({ min: 0.05, max: 0.99, noNaN: true }) });

describe('an arc from a chord and a rise', () => {
  it('has the radius of the circle that both were taken from, and no error against it', () => {
    fc.assert(fc.property(anArc, ({ radius, share }) => {
      const found = arcCheck({ ...measure(radius, 2 * radius * share), expected: inches(radius) });
      if (typeof found === 'string') throw new Error(found);
      expect(Math.abs(found.radius - radius) / radius).toBeLessThan(1e-9);
      expect(Math.abs(found.error ?? NaN)).toBeLessThan(1e-9);
      expect(found.within).toBe(true);
    }), { seed: 7 });
  });

  it('lies between what the readings allow, whichever way each was off', () => {
    fc.assert(fc.property(anArc, fc.double({ min: -1 / 32, max: 1 / 32, noNaN: true }), fc.double({ min: -1 / 32, max: 1 / 32, noNaN: true }), ({ radius, share }, one, two) => {
      const true_ = measure(radius, 2 * radius * Math.min(share, 0.9));
      const read = { ...true_, chord: inches(true_.chord + one), rise: inches(true_.rise + two), expected: null };
      fc.pre(read.rise > 0);
      const found = arcCheck(read);
      if (typeof found === 'string') throw new Error(found);
      expect(found.low).toBeLessThanOrEqual(radius * (1 + 1e-9));
      if (found.high !== null) expect(found.high).toBeGreaterThanOrEqual(radius * (1 - 1e-9));
    }), { seed: 8 });
  });

  it('that a short chord can\'t tell from a straight has no greatest radius', () => {
    // 12 in on 600 in: a rise of 0.03 in, under the 1/32 in of the tape.
    const found = arcCheck({ ...measure(600, 12), expected: null });
    expect(found).toMatchObject({ high: null, expected: null, error: null, within: null });
  });

  it('is refused where a rise no longer tells the radius, or the drawn circle is smaller than the chord', () => {
    const some = { read: inches(0.03125), grade: 'B' as const };
    expect(arcCheck({ ...some, chord: inches(36), rise: inches(18.001), expected: null })).toBe('rise-over-half-chord');
    expect(arcCheck({ ...some, chord: inches(36), rise: inches(1), expected: inches(17.9) })).toBe('chord-over-diameter');
  });

  // Saddle and sagitta row of the handbook values that this project keeps to: radius 144, chord 24, rise 0.500871.
  it('of 24 in and 0.500871 in is of radius 144', () => {
    expect(arcCheck({ chord: inches(24), rise: inches(0.500871), read: inches(0), expected: null, grade: 'B' })).toMatchObject({ radius: expect.closeTo(144, 3) as number });
  });
});

describe('an arc from three points', () => {
  it('is the one that they were taken from, past a half circle too', () => {
    fc.assert(fc.property(fc.double({ min: 60, max: 1240, noNaN: true }), fc.double({ min: 0.05, max: 1.9, noNaN: true }), fc.double({ min: 0.2, max: 0.8, noNaN: true }), (radius, turns, share) => {
      const at = (angle: number) => ({ x: 31 + radius * Math.cos(angle), y: -17 + radius * Math.sin(angle) });
      const found = arcThrough(at(0.3), at(0.3 + turns * Math.PI * share), at(0.3 + turns * Math.PI));
      expect(Math.abs((found?.radius ?? 0) - radius) / radius).toBeLessThan(1e-6);
      const rise = radius * (1 - Math.cos((turns * Math.PI) / 2));
      expect(Math.abs((found?.rise ?? 0) - rise) / radius).toBeLessThan(1e-6);
    }), { seed: 9 });
  });

  it('is none where they lie on a line', () => {
    expect(arcThrough({ x: 0, y: 0 }, { x: 5, y: 5 }, { x: 11, y: 11 })).toBeNull();
  });
});

// ISO 13920:1996 table 1, class B, as printed: 120 to 400 mm and 400 to 1000 mm.
it('allows a length what its class says, to the edge of its row', () => {
  expect(linearTolerance(inches(400 / 25.4), 'B') * 25.4).toBeCloseTo(2, 9);
  expect(linearTolerance(inches(400.001 / 25.4), 'B') * 25.4).toBeCloseTo(3, 9);
  expect(linearTolerance(inches(25_000 / 25.4), 'D') * 25.4).toBeCloseTo(40, 9);
});

describe('the command', () => {
  const run = (...words: string[]) => {
    const out: string[] = [];
    const err: string[] = [];
    const code = runArcCheck(words, { out: (line) => void out.push(line), err: (line) => void err.push(line) });
    return { code, out, err };
  };

  it('prints the figures as JSON', () => {
    const { code, out } = run('--chord', '36', '--rise', '1.125', '--radius', '145.29', '--json');
    expect(code).toBe(0);
    const told = JSON.parse(out[0] ?? '') as Record<string, unknown>;
    expect(Object.keys(told)).toEqual(['radius', 'low', 'high', 'expected', 'error', 'within']);
    // c²/(8s) + s/2 = 1296/9 + 0.5625, by hand.
    expect(told['radius']).toBeCloseTo(144.5625, 9);
    expect(told['expected']).toBe(145.29);
    expect(told['within']).toBe(true);
  });

  it('takes any unit and says how sure it is', () => {
    const { code, out } = run('--chord', '914.4 mm', '--rise', '1 1/8 in', '--radius', "12'-0\"");
    expect(code).toBe(0);
    expect(out.join('\n')).toMatch(/Radius 12'-0 9\/16" \(144\.56[23]\), between .* and /);
    expect(out.join('\n')).toMatch('within');
  });

  it('names every option that is at fault, and what is allowed', () => {
    const { code, err, out } = run('--chord', 'long', '--radius', '-3', '--class', 'E', '--depth', '4');
    expect(code).toBe(2);
    expect(out).toEqual([]);
    expect(err.map((line) => line.split(':')[0]).sort()).toEqual(['--chord', '--class', '--depth', '--radius', '--rise', '4'].sort());
    expect(err.every((line) => line.includes('allowed'))).toBe(true);
  });
});
