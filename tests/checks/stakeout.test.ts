import { describe, expect, it } from 'vitest';
import { planPoint } from '../../core/base/points.ts';
import { inches } from '../../core/base/quantity.ts';
import { type Brief } from '../../core/brief/types.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut } from '../support/laid-out.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const control = (b: readonly [number, number], c: readonly [number, number] | null = null): Brief =>
  makeBrief({ control: { b: planPoint(...b), c: c === null ? null : planPoint(...c), note: '' } });

/** Where two tapes cross, from the three sides by the law of cosines. */
function crossing(a: number, b: number, base: number): number {
  const angle = (Math.acos((a * a + b * b - base * base) / (2 * a * b)) * 180) / Math.PI;
  return Math.min(angle, 180 - angle);
}

describe('stakeout (follows from the drawing itself)', () => {
  it('measures the least angle at which two tapes cross', () => {
    const brief = control([-300, 500]);
    const angles = laidOut(brief).posts.filter((post) => post.kind !== 'pivot-post')
      .map(({ at }) => crossing(Math.hypot(at.x, at.y), Math.hypot(at.x + 300, at.y - 500), Math.hypot(300, 500)));
    expect(findingOf(brief, 'tie-angle').measured).toBeCloseTo(Math.min(...angles), 6);
  });

  it('looks at under 20 deg and names the points; a third control point can mend it', () => {
    const flat = findingOf(control([240, 0]), 'tie-angle');
    expect(flat.result).toBe('look');
    expect(flat.where).toMatch(/^4 of 34 points: H\d+, H\d+, H\d+, H\d+; the worst H\d+/);
    const mended = findingOf(control([240, 0], [420, -420]), 'tie-angle');
    expect(mended.result).toBe('ok');
    expect(mended.measured).toBeGreaterThan(20);
  });

  it('just meets and just misses 20 deg as C moves out along its line', () => {
    let [near, far] = [0.05, 1];
    const third: readonly [number, number] = [420, -420];
    const at = (share: number) => findingOf(control([240, 0], [third[0] * share, third[1] * share]), 'tie-angle');
    const first = at(near).result;
    expect([first, at(far).result].sort()).toEqual(['look', 'ok']);
    while (far - near > 1e-4) [near, far] = at((near + far) / 2).result === first ? [(near + far) / 2, far] : [near, (near + far) / 2];
    expect(at(near).measured).toBeCloseTo(20, 1);
    expect(at(far).measured).toBeCloseTo(20, 1);
  });

  it('keeps B and C 24 in clear of every hole\'s rim; A is the pivot post itself', () => {
    const outer = laidOut(makeBrief()).posts.filter((post) => post.run === 'crowd-pen' && post.kind === 'post')[1]!;
    const size = Math.hypot(outer.at.x, outer.at.y);
    const away = (by: number): readonly [number, number] => [(outer.at.x * (size + by)) / size, (outer.at.y * (size + by)) / size];
    // Holes of 12 in: 6 in to the rim.
    expect([29.99, 30.01].map((by) => findingOf(control(away(by)), 'control-clear').result)).toEqual(['look', 'ok']);
    const both = findingsOf(control([300, -300], away(20)), 'control-clear');
    expect(both.map(({ result }) => result)).toEqual(['ok', 'look']);
    expect(both[1]!.measured).toBeCloseTo(14, 9);
    const wide = { ...control(away(30.01)), footings: { diameter: inches(16), depth: inches(36) } };
    expect(findingOf(wide, 'control-clear').result).toBe('look');
  });
});
