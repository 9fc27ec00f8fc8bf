import { describe, expect, it } from 'vitest';
import { inches } from '../../core/base/quantity.ts';
import { fences, makeBrief, section } from '../support/brief-builder.ts';
import { partsOf } from '../support/laid-out.ts';
import { findingOf, findingsOf } from './support/checked.ts';

const rolls = (radius: number, length: number, grip = 8) =>
  makeBrief({ shop: { roll: { 'pipe 2 sch 40': { radius: inches(radius), length: inches(length) } }, grip: inches(grip) } });

describe('what the rolls take (the shop\'s own figure)', () => {
  it('is said to be missing where the shop gives none', () => {
    expect(findingOf(makeBrief(), 'roll-limit')).toMatchObject({ result: 'look', measured: null, where: 'pipe 2 sch 40: shop.roll gives no least radius and length' });
  });

  it('is held against the least axis radius', () => {
    // Crowd pen 144 + 1.2921 (geometry contract, worked values): the tightest of the example.
    expect([145.292, 145.293].map((radius) => findingsOf(rolls(radius, 12), 'roll-limit')[0]!.result)).toEqual(['ok', 'fix']);
    expect(findingsOf(rolls(100, 12), 'roll-limit')[0]!.measured).toBeCloseTo(145.2921, 4);
  });

  it('is held against the least order length, grips included', () => {
    const shortest = Math.min(...partsOf(makeBrief()).pieces.filter((piece) => piece.kind === 'rail' && piece.bend !== null).map((piece) => piece.length));
    for (const grip of [8, 11.5]) {
      const at = (length: number) => findingsOf(rolls(12, length, grip), 'roll-limit')[1]!;
      expect([-0.01, 0.01].map((by) => at(shortest + 2 * grip + by).result)).toEqual(['ok', 'fix']);
      expect(at(12)).toMatchObject({ limit: '>= 12', unit: 'in' });
    }
  });

  it('is asked of each section that is rolled, and of those alone', () => {
    const brief = makeBrief({ fences: { ...fences(), chute: fences({ rail: section('pipe 1 1/2 sch 40') }).chute, alley: fences({ rail: section('pipe 1 sch 40') }).alley } });
    expect(findingsOf(brief, 'roll-limit').map(({ where }) => where.split(':')[0])).toEqual(['pipe 2 sch 40', 'pipe 1 1/2 sch 40']);
  });
});
