import { describe, expect, it } from 'vitest';
import { degrees, inches } from '../../core/base/quantity.ts';
import { printFault } from '../../core/brief/print-fault.ts';
import { type Brief } from '../../core/brief/types.ts';
import { layOut } from '../../core/layout/index.ts';
import { arc, fence, fences, makeBrief, section, straight, type BriefParts } from '../support/brief-builder.ts';

/** The faults of a brief as a person reads them; none where it can be set out. */
function faultsOf(parts: BriefParts): readonly string[] {
  const result = layOut(makeBrief(parts));
  return result.ok ? [] : result.faults.map(printFault);
}

describe('what cannot be set out', () => {
  it('is a funnel that the alley leaves no wedge for at the pivot post', () => {
    const at = (sweep: number, funnelAngle: number): readonly string[] => faultsOf({ crowdPen: { sweep: degrees(sweep), funnelAngle: degrees(funnelAngle) } });
    expect(at(240, 30)).toEqual(['crowdPen.funnelAngle: leaves -30° between the funnel and the alley at the pivot post, must be over 0°: a funnel angle over the sweep less 180°']);
    expect(at(210, 30)[0]).toMatch('leaves 0° between');
    expect(at(180, 30)).toEqual([]);
  });

  it('is a corner at the pivot post that leaves less than 24 in of the funnel', () => {
    // ω = 2.6°: u0 = (3.9171·cos 1.3° + 1.9375) / sin 1.3° = 258 in, of a funnel of 128.5 in.
    const [fault] = faultsOf({ crowdPen: { sweep: degrees(242 - 2.6), funnelAngle: degrees(62) } });
    expect(fault).toBe('crowdPen.funnelAngle: the corner at the pivot post takes 258" of the funnel and leaves -126 5/8", must be 24" at least');
  });

  it('is an alley whose last run has less than 24 in left there, named where its length is said', () => {
    // u0 = 22.10: 46 in are too short, 46 1/8 in are not.
    expect(faultsOf({ alley: { runs: [straight(100), straight(46)] } })).toEqual([
      'alley.runs[1].length: the corner at the pivot post takes 22 1/8" of the alley\'s last run and leaves 23 7/8" of its fence, must be 24" at least',
    ]);
    expect(faultsOf({ alley: { runs: [straight(100), straight(46.125)] } })).toEqual([]);
    expect(faultsOf({ alley: { runs: [arc(60, 20, 'left')] } })[0]).toMatch(/^alley\.runs\[0\]\.angle: /);
  });

  it('is a corner at the mouth that takes all of the chute\'s first run', () => {
    const runs: Brief['chute']['runs'] = [arc(60, 5, 'left'), straight(60)];
    // Inner wall 5.24 in; a corner of 45° with 6 5/8 in posts stands farther on than that.
    const big = fences({ post: section('pipe 6 sch 40') });
    const found = faultsOf({ chute: { width: inches(28), runs }, crowdPen: { funnelAngle: degrees(90) }, fences: big });
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^chute\.runs\[0\]\.angle: the left fence of chute-1 leaves -?[\d /]+" between two posts/);
  });

  it('is two fences that never meet at the mouth', () => {
    // A thick funnel before the outer wall of a right turn: its post line passes beside the wall's circle.
    const thick = fence('fences.junction', { rail: section('pipe 6 sch 40'), post: section('pipe 6 sch 40') });
    const found = faultsOf({
      chute: { width: inches(14), runs: [arc(60, 40, 'right'), straight(60)] },
      crowdPen: { radius: inches(240), funnelAngle: degrees(10), sweep: degrees(120) },
      fences: { ...fences({ construction: 'coped' }), junction: { left: thick, right: thick } },
    });
    expect(found).toEqual(['crowdPen.funnelAngle: the fences of the funnel and of the chute never meet at the mouth, must be more alike in rails and posts or at a greater funnel angle']);
  });

  it('is a wall thicker than the radius of its face', () => {
    const huge = { ...section('pipe 6 sch 40'), across: inches(60), along: inches(60) };
    const found = faultsOf({ chute: { width: inches(28), runs: [straight(100), arc(60, 40, 'right')] }, fences: fences({ post: huge }) });
    expect(found).toContain('fences.crowdPen.post: the right fence of chute-2 is 62 1/2" thick outward, must be less than the radius of its face, 60"');
  });

  it('is more bays than a facility may have', () => {
    const runs = Array.from({ length: 12 }, () => straight(2400));
    expect(faultsOf({ alley: { runs }, fences: fences({ postSpacing: inches(24) }) })[0]).toMatch(/^fences\.crowdPen\.postSpacing: 24\d\d bays in the whole facility, 1 to 2000 are allowed$/);
  });

  it('prints in millimeters for a metric project', () => {
    expect(faultsOf({ units: 'mm', alley: { runs: [straight(40)] } })[0]).toMatch('takes 561 mm of the alley');
  });
});
