import { describe, expect, it } from 'vitest';
import { inches, toDegrees } from '../../core/base/quantity.ts';
import { type Brief, type CatwalkBrief } from '../../core/brief/types.ts';
import { type Catwalk, type Layout, layOut, stepAngle, stepFigures } from '../../core/layout/index.ts';
import { arc, fences, makeBrief, straight } from '../support/brief-builder.ts';

const walk = (parts: Partial<CatwalkBrief> = {}): CatwalkBrief =>
  ({ run: 'chute', side: 'left', from: inches(0), to: null, width: inches(20), deckHeight: null, path: 'catwalks[0]', ...parts });

function laid(brief: Brief): Layout {
  const result = layOut(brief);
  if (!result.ok) throw new Error(JSON.stringify(result.faults));
  return result.layout;
}
const catwalk = (parts: Partial<CatwalkBrief> = {}, brief: Partial<Brief> = {}): Catwalk => laid({ ...makeBrief(), ...brief, catwalks: [walk(parts)] }).catwalks[0]!;
const codes = (brief: Brief): readonly string[] => {
  const result = layOut(brief);
  return result.ok ? [] : result.faults.map(({ path, code }) => `${path} ${code}`);
};

// Geometry contract, Fence: lapped, t 0.1046, d 2.375, D 2.875: k 3.9171, so post backs lie 5.3546 from the face.
const BACK = 0.1046 + 2.375 + 2.875;

describe('the deck of a catwalk', () => {
  it('stands 42 in below the top of its fence unless it is set, and on the ground beside a lower one', () => {
    expect(catwalk().deckHeight).toBe(18);
    expect(catwalk({ deckHeight: inches(30) }).deckHeight).toBe(30);
    expect(catwalk({}, { fences: fences({ height: inches(40), solidTo: inches(40) }) }).deckHeight).toBe(0);
  });

  it('is trapezoids by exact circles: on an outer wall the middle of each edge touches the post backs, on an inner wall its corners', () => {
    for (const side of ['left', 'right'] as const) {
      // The chute turns right: its left wall is the outer one, at 192 + 28.
      const { stretches } = catwalk({ side });
      const [, second] = stretches;
      const outer = side === 'left';
      const radius = outer ? 220 + BACK : 192 - BACK;
      const run = laid({ ...makeBrief(), catwalks: [walk({ side })] }).runs.find(({ name }) => name === 'chute-2')!;
      if (run.path.kind !== 'arc') throw new Error('not an arc');
      const { center } = run.path;
      expect(second!.backRadius).toBeCloseTo(radius, 9);
      expect(second!.parts.length).toBeGreaterThan(5);
      for (const part of second!.parts) {
        const [a, b, c, d] = part.corners;
        const away = (p: { x: number; y: number }): number => Math.hypot(p.x - center.x, p.y - center.y);
        const half = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
        const touching = outer ? [away(half)] : [away(a), away(b)];
        for (const distance of touching) expect(distance).toBeCloseTo(radius, 9);
        // How far its edge stands off the circle elsewhere: the rise, at most an inch.
        expect(Math.abs((outer ? away(a) : away(half)) - radius)).toBeLessThanOrEqual(1 + 1e-9);
        expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(part.near, 9);
        expect(Math.hypot(c.x - d.x, c.y - d.y)).toBeCloseTo(part.far, 9);
        // Two parallel edges a width apart, and ends on radii, so that the mitre is half the part's angle.
        const open = { x: (c.x + d.x) / 2, y: (c.y + d.y) / 2 };
        expect(Math.hypot(open.x - half.x, open.y - half.y)).toBeCloseTo(20, 9);
        expect(Math.abs((b.x - a.x) * (c.y - d.y) - (b.y - a.y) * (c.x - d.x))).toBeLessThan(1e-6);
        for (const [near, far] of [[a, d], [b, c]] as const) expect(Math.abs((near.x - center.x) * (far.y - center.y) - (near.y - center.y) * (far.x - center.x))).toBeLessThan(1e-6);
        expect(part.mitre).toBeCloseTo(part.angle / 2, 12);
      }
    }
  });

  // By hand: outer wall, radius to the post backs 225.3546; a bay of 86.3938 along the face of 220 turns 22.5 degrees. Rise of a third of
  // it, 7.5 degrees: 225.3546·(1/cos 3.75° - 1) = 0.4835; of a half: 1.0883, too much. Chord at the fence 2·225.3546·tan 3.75° = 29.5412.
  it('parts a bay into as few as keep its rise within an inch (worked by hand)', () => {
    const { parts } = catwalk().stretches[1]!;
    const first = parts.filter(({ bay }) => bay === 1);
    expect(first).toHaveLength(3);
    expect(toDegrees(first[0]!.angle)).toBeCloseTo(7.5, 6);
    expect(first[0]!.near).toBeCloseTo(29.5412, 3);
    expect(first[0]!.far).toBeCloseTo(2 * 245.3546 * Math.tan((3.75 * Math.PI) / 180), 3);
  });

  it('goes over several runs of the chute by stations from the mouth, and along one run by its face', () => {
    const { stretches } = catwalk({ from: inches(60), to: inches(300) });
    expect(stretches.map(({ run }) => run)).toEqual(['chute-1', 'chute-2']);
    expect([stretches[0]!.from, stretches[0]!.to]).toEqual([60, 120]);
    // 180 in along the centerline at 206 is that much more along the face at 220.
    expect(stretches[1]!.to).toBeCloseTo((180 * 220) / 206, 9);
    expect(catwalk({ run: 'chute-2', to: inches(90) }).stretches[0]!.to).toBe(90);
  });

  it('beyond its run, above its fence, on no fence, or wider than a curve allows is a fault', () => {
    const faults = (parts: Partial<CatwalkBrief>, brief: Partial<Brief> = {}): readonly string[] => codes({ ...makeBrief(), ...brief, catwalks: [walk(parts)] });
    const total = 120 + 206 * (Math.PI / 2) + 72;
    expect(faults({ to: inches(total) })).toEqual([]);
    expect(faults({ to: inches(total + 0.1) })).toEqual(['catwalks[0].to fault.catwalk-beyond']);
    expect(faults({ from: inches(total) })).toEqual(['catwalks[0].from fault.catwalk-start']);
    expect(faults({ deckHeight: inches(60) })).toEqual([]);
    expect(faults({ deckHeight: inches(60.1) })).toEqual(['catwalks[0].deckHeight fault.catwalk-above']);
    expect(faults({ run: 'crowd-pen', side: 'left' })).toEqual(['catwalks[0].side fault.opening-fence']);
    const tight = { chute: { width: inches(28), runs: [straight(120), arc(80, 90, 'left')] } };
    // 80 - 5.3546 leaves 24 in of radius to a deck of 50.645.
    const low = { run: 'chute-2', deckHeight: inches(9) };
    expect(faults({ ...low, width: inches(50.6) }, tight)).toEqual([]);
    expect(faults({ ...low, width: inches(50.7) }, tight)).toEqual(['catwalks[0].width fault.catwalk-radius']);
    // Its open edge there is too short for steps.
    expect(faults({ run: 'chute-2', width: inches(50) }, tight)).toEqual(['catwalks[0].from fault.catwalk-short']);
  });
});

describe('the steps of a catwalk', () => {
  // WAC 296-24-74010, Table D-1 (read): angle, rise, tread run. The row of 8 on 9 1/2 prints 40°08'; by arithmetic it is 40°06'.
  it.each([
    ['30°35', 6.5, 11], ['32°08', 6.75, 10.75], ['33°41', 7, 10.5], ['35°16', 7.25, 10.25], ['36°52', 7.5, 10], ['38°29', 7.75, 9.75], ['40°06', 8, 9.5],
    ['41°44', 8.25, 9.25], ['43°22', 8.5, 9], ['45°00', 8.75, 8.75], ['46°38', 9, 8.5], ['48°16', 9.25, 8.25], ['49°54', 9.5, 8],
  ])('rise at %s', (printed, riser, tread) => {
    const [degrees = NaN, minutes = NaN] = printed.split('°').map(Number);
    expect(Math.abs(toDegrees(stepAngle(riser, tread)) - (degrees + minutes / 60))).toBeLessThanOrEqual(1 / 60);
  });

  it('have as few equal risers as 9 1/2 in allows', () => {
    expect([9.5, 9.6, 18, 19, 28.5, 48].map((height) => stepFigures(height).risers)).toEqual([1, 2, 2, 2, 3, 6]);
    expect(stepFigures(18)).toEqual({ risers: 2, riser: 9, tread: 10 });
    const { flights } = catwalk();
    expect(flights.map(({ at, riser, length }) => [at, riser, length])).toEqual([['start', 9, 10], ['end', 9, 10]]);
  });
});

describe('fouls of a deck', () => {
  it('stands clear beside the contract\'s example, and in the fence of a chute that turns back on it', () => {
    expect(laid({ ...makeBrief(), catwalks: [walk({ to: inches(300) })] }).fouls).toEqual([]);
    const back = makeBrief({ chute: { width: inches(28), runs: [straight(60), arc(84, 180, 'left'), straight(200)] } });
    const fouls = laid({ ...back, catwalks: [walk({ run: 'chute-3', side: 'left', width: inches(60), to: inches(150) })] }).fouls.filter(({ deck }) => deck !== undefined);
    expect(fouls.length).toBeGreaterThan(0);
    expect(fouls.every(({ kind }) => kind === 'foul-fence')).toBe(true);
  });
});
