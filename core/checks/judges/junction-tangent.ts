import { signedAngle } from '../../base/angle.ts';
import { curveHeading, curveLength, curvePoint, type Curve } from '../../base/curve.ts';
import { type PlanPoint } from '../../base/points.ts';
import { toDegrees } from '../../base/quantity.ts';
import { SAME_LENGTH } from '../../base/tolerance.ts';
import { otherSide } from '../../brief/types.ts';
import { say } from '../../text/index.ts';
import { judged, type Judge, type Outcome } from '../outcome.ts';
import { meets } from '../rules/limit.ts';
import { rules } from '../rules/table.ts';

/**
 * The kink between the curves of the outer face themselves, at each join from the crowd pen through the junction into the chute.
 * A junction of no length (a flat wall) is stepped over.
 */
export const junctionTangent: Judge = ({ brief, layout, pen, chute }) => {
  const side = otherSide(brief.crowdPen.hand);
  const junction = layout.runs.filter((run) => run.name === 'junction');
  const faces: { run: string; face: Curve<PlanPoint> }[] = [];
  for (const run of [pen, ...junction, ...chute.slice(0, 1)]) {
    const face = run.faces[side];
    if (face !== null && curveLength(face) > SAME_LENGTH) faces.push({ run: run.name, face });
  }
  return faces.slice(1).map(({ run, face }, index): Outcome => {
    const before = faces[index]!;
    const kink = toDegrees(signedAngle(curveHeading(face, 0) - curveHeading(before.face, 1)));
    const where = say('where.tangent', { first: before.run, second: run, side });
    return judged(meets(rules['junction-tangent'].limit, kink), Math.abs(kink), where, curvePoint(face, 0));
  });
};
