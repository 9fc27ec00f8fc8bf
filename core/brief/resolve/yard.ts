import { inches } from '../../base/quantity.ts';
import { DEFAULTS } from '../defaults.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';
import { type FloorsBrief, type RoofBrief, type RoofSide, type SortPenBrief, type SqueezePadBrief } from '../yard-brief.ts';
import { type Filler } from './filler.ts';

const OPEN: readonly RoofSide[] = ['in', 'out'];

/** The pad with its roof; the figures that the file leaves out are noted with those of the other subjects. */
export function resolvePad({ squeezePad: pad }: ProjectFile): SqueezePadBrief | null {
  if (pad === undefined) return null;
  const { length, width } = DEFAULTS.pad;
  return { length: pad.length ?? inches(length), width: pad.width ?? inches(width), roof: pad.roof === undefined ? null : resolveRoof(pad.roof) };
}

type RoofFile = NonNullable<NonNullable<ProjectFile['squeezePad']>['roof']>;

function resolveRoof(roof: RoofFile): RoofBrief {
  const { length, width, daylight } = DEFAULTS.roof;
  return { length: roof.length ?? inches(length), width: roof.width ?? inches(width), open: roof.open ?? OPEN, daylight: roof.daylight ?? daylight };
}

/** The sort pens in the order of the walk, named in it. */
export const resolveSortPens = (file: ProjectFile): readonly SortPenBrief[] => (file.sortPens ?? []).map(({ side, gate }, index) =>
  ({ name: `sort-${String(index + 1)}`, side, gate: gate ?? inches(DEFAULTS.sortGate), path: pathText(['sortPens', index]) }));

export function resolveFloors({ floors = {} }: ProjectFile, filler: Filler): FloorsBrief {
  const { fall, thickness, pattern } = DEFAULTS.floors;
  return {
    thickness: filler.length('floors.thickness', floors.thickness, thickness),
    pattern: filler.word('floors.pattern', floors.pattern, pattern),
    fall: filler.number('floors.fall', floors.fall, fall),
  };
}
