import { curveLength, curvePoint } from '../../base/curve.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { RETURN_GATE } from '../../brief/holding-gate.ts';
import { isJambedGate } from '../../layout/index.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** The field of a gate's clear width; a holding pen has a width of its own. */
function widthField(path: string): string {
  if (path === RETURN_GATE) return 'returnAlley.width';
  return path.startsWith('holdingPens[') ? `${path}.gate` : `${path}.width`;
}

/** Of the gate whose width is dragged, sort gates apart, whose field is `gate`: the clear width between its jambs, straight across. */
export function gateSizes({ input: { layout }, h, options: { dragged } }: Scene): readonly SizeShown[] {
  if (dragged === null) return [];
  const gate = layout.openings.find(({ path }) => dragged === widthField(path));
  if (gate === undefined || !isJambedGate(gate)) return [];
  const face = layout.runs.find(({ name }) => name === gate.run)?.faces[gate.side];
  if (face === undefined || face === null) return [];
  const length = curveLength(face);
  const [from, to] = [curvePoint(face, gate.from / length), curvePoint(face, gate.to / length)];
  return [{ path: dragged, spec: { measure: 'aligned', required: true, from: seen(from), to: seen(to), offsets: [4, -4, 6, -6, 9].map((reach) => reach * h) } }];
}
