import { planPoint } from '../../base/points.ts';
import { degrees, inches } from '../../base/quantity.ts';
import { DEFAULTS } from '../defaults.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type RampBrief } from '../types.ts';

type RampFile = NonNullable<ProjectFile['ramps']>[number];

/** The ramps in the order of the walk, named in it: those for loading, then those for unloading. */
export function resolveRamps(file: ProjectFile): readonly RampBrief[] {
  const all = (file.ramps ?? []).map((ramp, index) => ({ ramp, path: pathText(['ramps', index]) }));
  return (['load', 'unload'] as const).flatMap((kind) =>
    all.filter(({ ramp }) => ramp.kind === kind).map(({ ramp, path }, i) => resolveRamp(`${kind}-${String(i + 1)}`, ramp, path)));
}

/** One ramp; the figures that it leaves out are noted with those of the other subjects. */
function resolveRamp(name: string, ramp: RampFile, path: string): RampBrief {
  const own = DEFAULTS.ramp[ramp.kind];
  const { tread } = DEFAULTS.ramp.load;
  const { slope, cleat } = DEFAULTS.ramp.unload;
  const [x = NaN, y = NaN] = ramp.at ?? [];
  return {
    name,
    kind: ramp.kind,
    dockHeight: ramp.dockHeight ?? inches(own.dockHeight),
    width: ramp.width ?? inches(own.width),
    dockLength: ramp.dockLength ?? inches(own.dockLength),
    surface: (ramp.surface ?? own.surface) === 'stepped'
      ? { kind: 'stepped', tread: ramp.tread ?? inches(tread) }
      : { kind: 'cleated', slope: ramp.slope ?? degrees(slope), cleat: ramp.cleat ?? inches(cleat) },
    at: ramp.at === undefined ? null : planPoint(x, y),
    heading: ramp.heading ?? null,
    path,
  };
}
