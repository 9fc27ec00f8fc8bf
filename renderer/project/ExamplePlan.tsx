import { type ReactElement } from 'react';
import { type Curve, curveLength, curvePoint } from '../../core/base/curve.ts';
import { type PlanPoint } from '../../core/base/points.ts';
import { type Brief } from '../../core/brief/index.ts';
import { layOut } from '../../core/layout/index.ts';

/** Points along a curve that its bounds are taken from: enough that an arc stands out of them by less than the margin. */
const POINTS = 24;
/** Of the greater side, around it. */
const MARGIN = 0.04;

/** The faces of an example's fences in plan, small: what a person would sketch of it. Nothing is drawn of a brief that can't be laid out. */
export function ExamplePlan({ brief }: { readonly brief: Brief }): ReactElement | null {
  const laid = layOut(brief);
  if (!laid.ok) return null;
  const faces = laid.layout.fences.map((fence) => fence.face).filter((face) => curveLength(face) > 0);
  return (
    <svg className="begin-plan" viewBox={viewBoxOf(faces)} aria-hidden="true">
      {faces.map((face, index) => <path key={index} d={pathOf(face)} />)}
    </svg>
  );
}

/** A curve as path data, y down. */
function pathOf(curve: Curve<PlanPoint>): string {
  const from = curvePoint(curve, 0);
  const to = curvePoint(curve, 1);
  const start = `M ${String(from.x)} ${String(-from.y)}`;
  if (curve.kind === 'line') return `${start} L ${String(to.x)} ${String(-to.y)}`;
  const large = Math.abs(curve.sweep) > Math.PI ? 1 : 0;
  const turn = curve.sweep > 0 ? 0 : 1;
  return `${start} A ${String(curve.radius)} ${String(curve.radius)} 0 ${String(large)} ${String(turn)} ${String(to.x)} ${String(-to.y)}`;
}

function viewBoxOf(curves: readonly Curve<PlanPoint>[]): string {
  const points = curves.flatMap((curve) => Array.from({ length: POINTS + 1 }, (_, index) => curvePoint(curve, index / POINTS)));
  const [xs, ys] = [points.map((point) => point.x), points.map((point) => -point.y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - left, Math.max(...ys) - top];
  const margin = MARGIN * Math.max(width, height);
  return [left - margin, top - margin, width + 2 * margin, height + 2 * margin].map(String).join(' ');
}
