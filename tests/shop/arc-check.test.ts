import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { arcCheck, arcCheckPoints, arcThrough, linearTolerance, type Three } from '../../core/shop/index.ts';
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

describe('an arc checked by three points', () => {
  const drawn = { read: inches(1 / 16), expected: null, grade: 'B' as const };
  const threeOf = (radius: number, angle: number, turned: number): Three => {
    const at = (f: number) => ({ x: 40 + radius * Math.cos(turned + angle * f), y: 70 + radius * Math.sin(turned + angle * f) });
    return [at(0), at(0.45), at(1)];
  };
  const some = fc.record({
    radius: fc.double({ min: 60, max: 1240, noNaN: true }), span: fc.double({ min: 20, max: 90, noNaN: true }), turned: fc.double({ min: 0, max: 6, noNaN: true }),
    offs: fc.array(fc.double({ min: -1 / 16, max: 1 / 16, noNaN: true }), { minLength: 6, maxLength: 6 }),
  });

  it('has the radius that they were taken from, and lies between what a tape\'s 1/16 in leaves open', () => {
    fc.assert(fc.property(some, ({ radius, span, turned, offs }) => {
      const [a, b, c] = threeOf(radius, span / radius, turned);
      const exact = arcCheckPoints({ points: [a, b, c], ...drawn });
      if (typeof exact === 'string') throw new Error(exact);
      expect(Math.abs(exact.radius - radius) / radius).toBeLessThan(1e-6);
      const [p = 0, q = 0, r = 0, s = 0, t = 0, u = 0] = offs;
      const read = arcCheckPoints({ points: [{ x: a.x + p, y: a.y + q }, { x: b.x + r, y: b.y + s }, { x: c.x + t, y: c.y + u }], ...drawn });
      if (read === 'points-on-a-line') return;
      if (typeof read === 'string') throw new Error(read);
      expect(read.low).toBeLessThanOrEqual(radius * (1 + 1e-9));
      if (read.high !== null) expect(read.high).toBeGreaterThanOrEqual(radius * (1 - 1e-9));
    }), { seed: 10, numRuns: 300 });
  });

  it('can\'t be told from a straight over a short chord, and is over a long one', () => {
    // 24 in of radius 600 rises 0.12 in, less than a sixteenth three times over; 90 in of it rises 1.69 in.
    expect(arcCheckPoints({ points: threeOf(600, 24 / 600, 0.4), ...drawn })).toMatchObject({ high: null });
    expect(arcCheckPoints({ points: threeOf(600, 90 / 600, 0.4), ...drawn })).toMatchObject({ high: expect.any(Number) as number });
  });

  it('is refused on a line and out of order', () => {
    expect(arcCheckPoints({ points: [{ x: 0, y: 0 }, { x: 5, y: 5 }, { x: 11, y: 11 }], ...drawn })).toBe('points-on-a-line');
    const [a, b, c] = threeOf(100, 0.6, 0);
    expect(arcCheckPoints({ points: [b, a, c], ...drawn })).toBe('points-out-of-order');
  });
});

describe('the error at the ends of a whole piece', () => {
  it('is how far the two arcs part there when they touch at their middle', () => {
    fc.assert(fc.property(anArc, fc.double({ min: 0.9, max: 1.1, noNaN: true }), fc.double({ min: 20, max: 150, noNaN: true }), ({ radius }, off, panel) => {
      const expected = radius * off;
      fc.pre(panel < 3 * Math.min(radius, expected));
      const found = arcCheck({ ...measure(radius, Math.min(36, radius)), read: inches(0), expected: inches(expected), panel: inches(panel) });
      if (typeof found === 'string') throw new Error(found);
      // Each arc's end from its middle, by stepping along it in 4,000 straight steps that turn a little each.
      const end = (r: number): number => {
        let [y, heading] = [0, 0];
        const step = panel / 2 / 4000;
        for (let i = 0; i < 4000; i++) {
          y += step * Math.sin(heading + step / (2 * r));
          heading += step / r;
        }
        return y;
      };
      expect(found.error).toBeCloseTo(end(radius) - end(expected), 4);
      expect(found.tolerance).toBe(linearTolerance(inches(panel), 'B'));
    }), { seed: 11, numRuns: 60 });
  });

  it('is sure over a long chord and not over a short one', () => {
    const held = { expected: inches(145.2921), panel: inches(180), grade: 'B' as const, read: inches(1 / 16) };
    expect(arcCheck({ ...measure(145.2921, 12), ...held })).toMatchObject({ within: true, sure: false });
    expect(arcCheck({ ...measure(145.2921, 150), ...held })).toMatchObject({ within: true, sure: true });
    expect(arcCheck({ ...measure(100, 90), ...held })).toMatchObject({ within: false, sure: true });
    expect(arcCheck({ ...measure(145.2921, 36), ...held, panel: inches(3.15 * 145.3) })).toBe('panel-over-half-turn');
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

  it('takes three points, and the length of the whole piece', () => {
    // Chord 36 and rise 1 1/8 again, from the corner of a bench.
    const points = ['--point', '2,3', '--point', "20 in, 4 1/8 in", '--point', '38, 3'];
    const { code, out } = run(...points, '--radius', '145.29', '--length', '15 ft', '--json');
    expect(code).toBe(0);
    const told = JSON.parse(out[0] ?? '') as Record<string, number>;
    expect(told['radius']).toBeCloseTo(144.5625, 9);
    const rise = (r: number): number => r * (1 - Math.cos(90 / r));
    expect(told['error']).toBeCloseTo(rise(144.5625) - rise(145.29), 9);
    expect(run(...points).out.join()).toMatch(/between .* and /);
  });

  it('refuses points that are no points, too few of them, and what does not go with them', () => {
    const fault = (...words: string[]): string => { const { code, err } = run(...words); expect(code).toBe(2); return err.join(); };
    expect(fault('--point', '1,2', '--point', '3')).toMatch(/--point: "3" .*allowed/);
    expect(fault('--point', '1,2', '--point', '3,4')).toMatch(/--point: is given 2 times; allowed/);
    expect(fault('--point', '0,0', '--point', '1,1', '--point', '2,2')).toMatch(/--point: the three lie on a line; allowed/);
    expect(fault('--point', '0,0', '--point', '1,1', '--point', '2,0.5', '--chord', '3')).toMatch(/--chord: does not go with --point; allowed/);
    expect(fault('--chord', '36', '--rise', '1', '--length', '9 ft')).toMatch(/--length: .*allowed/);
  });
});
