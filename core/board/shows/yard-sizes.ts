import { curveLength, curvePoint } from '../../base/curve.ts';
import { viewPoint, type Vec } from '../../base/points.ts';
import { type DimensionSpec } from '../../drafting/model.ts';
import { isJambedGate } from '../../layout/index.ts';
import { type Scene, type SizeShown } from './show.ts';

const seen = ({ x, y }: Vec): ReturnType<typeof viewPoint> => viewPoint(x, y);

/** Length and width of the squeeze pad, width of each sort gate; the one that is dragged must be shown. */
export const yardSizes = (scene: Scene): readonly SizeShown[] => [...padSizes(scene), ...sortSizes(scene)];

function padSizes({ input: { layout }, h, options }: Scene): readonly SizeShown[] {
  const run = layout.runs.find(({ name }) => name === 'squeeze-pad');
  const { left, right } = run?.faces ?? {};
  if (left === null || left === undefined || right === null || right === undefined) return [];
  const size = (path: string, from: Vec, to: Vec, reaches: readonly number[]): SizeShown => {
    const spec: DimensionSpec = { measure: 'aligned', required: options.dragged === path, from: seen(from), to: seen(to), offsets: reaches.map((reach) => reach * h) };
    return { path, spec };
  };
  return [
    size('squeezePad.length', curvePoint(right, 0), curvePoint(right, 1), [-4, -6, -9]),
    size('squeezePad.width', curvePoint(left, 0.7), curvePoint(right, 0.7), [0, 3, -3]),
  ];
}

function sortSizes({ input: { brief, layout }, h, options }: Scene): readonly SizeShown[] {
  return brief.sortPens.flatMap(({ name, side, path: pen }): readonly SizeShown[] => {
    const face = layout.runs.find((run) => run.name === name)?.faces[side];
    const gate = layout.openings.find((one) => one.path === pen);
    if (face === undefined || face === null || gate === undefined || !isJambedGate(gate)) return [];
    const path = `${pen}.gate`;
    const length = curveLength(face);
    const sign = side === 'left' ? 1 : -1;
    return [{
      path,
      spec: {
        measure: 'aligned', required: options.dragged === path, from: seen(curvePoint(face, gate.from / length)), to: seen(curvePoint(face, gate.to / length)),
        offsets: [4, 6, 9, -4, -6].map((reach) => sign * reach * h),
      },
    }];
  });
}
