import { describe, expect, it } from 'vitest';
import { planPoint } from '../../core/base/points.ts';
import { check } from '../../core/checks/index.ts';
import { makeBrief } from '../support/brief-builder.ts';
import { laidOut, partsOf } from '../support/laid-out.ts';

describe('a kink in the outer face', () => {
  it('is measured from the curves and is a fix (common practice, no source)', () => {
    const brief = makeBrief();
    const layout = laidOut(brief);
    // No brief makes a kink, so one is bent into the layout: the junction's outer face leans 2.5 in over its length.
    const runs = layout.runs.map((run) => {
      const face = run.faces.right;
      if (run.name !== 'junction' || face?.kind !== 'line') return run;
      return { ...run, faces: { ...run.faces, right: { ...face, b: planPoint(face.b.x - 2.5, face.b.y) } } };
    });
    const found = check(brief, { ...layout, runs }, partsOf(brief)).filter((finding) => finding.id === 'junction-tangent');
    const kink = (Math.atan2(2.5, (144 - 28) / Math.tan(Math.PI / 6)) * 180) / Math.PI;
    expect(found.map((finding) => finding.result)).toEqual(['fix', 'fix']);
    for (const finding of found) expect(finding.measured).toBeCloseTo(kink, 9);
  });
});
