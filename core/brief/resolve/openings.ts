import { inches } from '../../base/quantity.ts';
import { DEFAULTS } from '../defaults.ts';
import { type OpeningBrief } from '../opening-brief.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';

/** Runs whose fences this version builds; those of the others are counted by `laterOpenings`. */
const isBuilt = (run: string): boolean => /^(crowd-pen|junction|chute|(alley|chute)-\d+)$/.test(run);

/** The openings of a project without faults; their defaults are noted elsewhere. Throws where a man gate has no side: the fault comes first. */
export function resolveOpenings(file: ProjectFile): readonly OpeningBrief[] {
  return (file.openings ?? []).flatMap((opening, index): readonly OpeningBrief[] => {
    const path = pathText(['openings', index]);
    const { kind, run, at, side } = opening;
    if (!isBuilt(run)) return [];
    if (kind === 'backstop') return [{ kind, run, at, held: opening.held ?? DEFAULTS.opening.held, path }];
    if (side === undefined) throw new Error(`${path} has no side though no fault was told`);
    return [{ kind, run, at, side, width: opening.width ?? inches(DEFAULTS.opening.width), path }];
  });
}

/** How many openings stand on runs that this version does not build. */
export const laterOpenings = (file: ProjectFile): number => (file.openings ?? []).filter(({ run }) => !isBuilt(run)).length;
