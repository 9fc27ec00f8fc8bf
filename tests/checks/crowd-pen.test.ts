import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { findingOf, findingsOf, resultsOf } from './support/checked.ts';

describe('the crowd pen', () => {
  it('sweeps half round (common practice, no source)', () => {
    expect(findingOf(makeBrief(), 'crowd-sweep')).toMatchObject({ result: 'ok', measured: 180, limit: '= 180', unit: 'deg', trust: 'practice' });
    expect(findingOf(makeBrief({ crowdPen: { sweep: degrees(179.9) } }), 'crowd-sweep').result).toBe('look');
  });

  it('has a radius of 10 to 12 ft (from memory, no source)', () => {
    const at = (radius: number) => findingOf(makeBrief({ crowdPen: { radius: inches(radius) } }), 'crowd-radius');
    expect([119.9, 120, 144, 144.1].map((radius) => at(radius).result)).toEqual(['look', 'ok', 'ok', 'look']);
    expect(at(131.5).measured).toBe(131.5);
  });

  it('has a funnel of 25 to 40 deg (from memory, no source)', () => {
    const at = (angle: number) => findingOf(makeBrief({ crowdPen: { funnelAngle: degrees(angle) } }), 'funnel-angle').result;
    expect([24.9, 25, 40, 40.1].map(at)).toEqual(['look', 'ok', 'ok', 'look']);
  });

  it('runs on into the junction and the chute without a kink (common practice, no source), a flat wall too', () => {
    for (const hand of ['left', 'right'] as const) {
      const found = findingsOf(makeBrief({ crowdPen: { hand } }), 'junction-tangent');
      expect(found.map((finding) => [finding.result, finding.where])).toEqual([
        ['ok', `crowd-pen to junction, ${hand === 'left' ? 'right' : 'left'} side`],
        ['ok', `junction to chute-1, ${hand === 'left' ? 'right' : 'left'} side`],
      ]);
      for (const finding of found) expect(finding.measured).toBeCloseTo(0, 9);
    }
    const flat = findingOf(makeBrief({ crowdPen: { funnelAngle: degrees(90) } }), 'junction-tangent');
    expect(flat).toMatchObject({ result: 'ok', where: 'crowd-pen to chute-1, right side' });
  });

  // Univ. of Arkansas Extension (MP239 companion): 6, 10 and 12 ft2 a head. A half circle of 144 in has 226.195 ft2.
  it.each([['calf', 37, 6], ['yearling', 22, 10], ['mature', 18, 12]] as const)('holds as many %s as have their area: %d', (kind, head, least) => {
    const brief = makeBrief();
    const finding = findingOf({ ...brief, cattle: { ...brief.cattle, kind } }, 'crowd-area');
    expect(finding).toMatchObject({ result: 'ok', limit: `>= ${String(least)}`, unit: 'ft2' });
    expect(finding.where).toContain(`226.2 ft2: room for ${String(head)} head`);
    expect(finding.measured).toBeCloseTo((Math.PI * 12 * 12) / 2 / head, 9);
  });

  it('falls no more than 2 in 100 (from memory, no source)', () => {
    expect([0.02, 0.021].map((fall) => findingOf(makeBrief({ floors: { fall, thickness: inches(6), pattern: '' } }), 'ground-fall').result)).toEqual(['ok', 'look']);
  });

  it('has no walkway round it where the brief has no catwalk (common practice, no source)', () => {
    expect(resultsOf(makeBrief(), 'crowd-catwalk')).toEqual(['look']);
  });
});
