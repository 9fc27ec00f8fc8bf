import { describe, expect, it } from 'vitest';
import { distance, sub, cross } from '../../../core/base/points.ts';
import { seeAhead } from '../../../core/checks/index.ts';
import { arc, makeBrief, straight } from '../../support/brief-builder.ts';
import { layOut } from '../../../core/layout/index.ts';
import { seeded } from '../../support/random.ts';
import { chutePath } from './chute-path.ts';
import { seenAngle, seenClosedForm } from './closed-form.ts';
import { seenBySteps } from './seen-by-steps.ts';

const lead = (length: number) => (length === 0 ? [] : [straight(length)]);
const seenOf = (width: number, runs: Parameters<typeof chutePath>[1]): number => seeAhead(chutePath(width, runs)).seen;

describe('seeing ahead from the mouth', () => {
  // geometry contract, Sight: its table of four.
  it.each([[192, 28, 120, 218.435], [192, 28, 0, 152.768], [144, 28, 120, 204.246], [144, 28, 0, 134.029]])(
    'inside radius %d, width %d, lead %d: %d in', (inside, width, length, seen) => {
      expect(seenClosedForm(inside, width, length)).toBeCloseTo(seen, 3);
      expect(Math.abs(seenOf(width, [...lead(length), arc(inside, 90, 'right'), straight(72)]) - seen)).toBeLessThan(1e-3);
    });

  it('is the closed form for any lead, radius, width and hand, over the full ranges', () => {
    const random = seeded(11);
    for (let i = 0; i < 400; i++) {
      const [inside, width, length] = [random.between(60, 1200), random.between(14, 40), random.chance(0.2) ? 0 : random.between(12, 2400)];
      const angle = random.between(Math.min(270, (seenAngle(inside, width, length) * 180) / Math.PI + 0.5), 270);
      const sight = seeAhead(chutePath(width, [...lead(length), arc(inside, angle, random.pick(['left', 'right'])), straight(60)]));
      expect(sight.whole).toBe(false);
      expect(Math.abs(sight.seen - seenClosedForm(inside, width, length))).toBeLessThan(1e-6);
    }
  });

  it('does not mind in how many runs the same chute is written', () => {
    for (const hand of ['left', 'right'] as const) {
      const whole = seenOf(26, [straight(100), arc(150, 90, hand)]);
      expect(seenOf(26, [straight(60), straight(40), arc(150, 20, hand), arc(150, 12, hand), arc(150, 58, hand)])).toBeCloseTo(whole, 6);
    }
  });

  it('agrees with walking the lines in short steps, any runs and hands', () => {
    const random = seeded(7);
    for (let i = 0; i < 40; i++) {
      const width = random.between(16, 40);
      const runs = Array.from({ length: random.whole(1, 6) }, () => (random.chance(0.4)
        ? straight(random.between(12, 150))
        : arc(random.between(60, 400), random.between(5, 50), random.pick(['left', 'right']))));
      const exact = seenOf(width, runs);
      // Where the line only just slips past a wall the steps cannot tell, so a chute a hair wider or narrower may be told instead.
      const [narrow, wide] = [seenBySteps(width - 0.2, runs), seenBySteps(width + 0.2, runs)];
      expect(exact, JSON.stringify({ width, runs })).toBeGreaterThan(narrow - 2);
      expect(exact, JSON.stringify({ width, runs })).toBeLessThan(wide + 2);
    }
  });

  it('sees a straight chute to its end, and a gentle bend of one', () => {
    expect(seeAhead(chutePath(28, [straight(300)]))).toMatchObject({ whole: true, seen: 300, run: 'chute-1', graze: null });
    expect(seeAhead(chutePath(28, [straight(100), arc(600, 6, 'left'), straight(20)])).whole).toBe(true);
  });

  it('sees into the straight behind a bend that ends before the centerline is lost', () => {
    const [inside, width, length, angle] = [300, 28, 100, 20];
    const rc = inside + width / 2;
    // In the bend's own frame: the line grazes the inner wall delta before the bend's end and crosses the straight that leaves it.
    const delta = (angle * Math.PI) / 180 - (seenAngle(inside, width, length) - Math.acos(inside / rc));
    const past = (rc * Math.cos(delta) - inside) / Math.sin(delta);
    const sight = seeAhead(chutePath(width, [straight(length), arc(inside, angle, 'right'), straight(400)]));
    expect(sight.run).toBe('chute-3');
    expect(past).toBeGreaterThan(5);
    expect(sight.seen).toBeCloseTo(length + (rc * angle * Math.PI) / 180 + past, 6);
  });

  it('draws its sight line from the eye past the wall to where the centerline is lost', () => {
    for (const hand of ['left', 'right'] as const) {
      const laid = layOut(makeBrief({ crowdPen: { hand } }));
      if (!laid.ok) throw new Error('faults');
      const sight = seeAhead(laid.layout.runs);
      const run = laid.layout.runs.find((each) => each.name === 'chute-2')!;
      expect(sight.eye).toEqual(laid.layout.mouth);
      const graze = sight.graze!;
      const center = run.path.kind === 'arc' ? run.path.center : sight.eye;
      expect(distance(graze, center)).toBeCloseTo(192, 9);
      expect(distance(sight.end, center)).toBeCloseTo(206, 9);
      expect(cross(sub(graze, sight.eye), sub(sight.end, sight.eye))).toBeCloseTo(0, 6);
      expect(distance(sight.eye, graze)).toBeLessThan(distance(sight.eye, sight.end));
    }
  });

  it('throws where there is no chute', () => {
    expect(() => seeAhead([])).toThrow('0');
  });
});
