import { inches } from '../../base/quantity.ts';
import { type CatwalkBrief } from '../catwalk-brief.ts';
import { DEFAULTS } from '../defaults.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';

/** Runs whose fences stand level: a deck can follow them. Those of the others are counted by `laterCatwalks`. */
const isBuilt = (run: string): boolean => /^(crowd-pen|junction|chute|squeeze-pad|(alley|chute)-\d+)$/.test(run);

/** The catwalks of a project without faults; their defaults are noted elsewhere. */
export function resolveCatwalks(file: ProjectFile): readonly CatwalkBrief[] {
  return (file.catwalks ?? []).flatMap((catwalk, index): readonly CatwalkBrief[] => {
    const { run, side, from, to, width, deckHeight } = catwalk;
    if (!isBuilt(run)) return [];
    return [{
      run, side, from: from ?? inches(DEFAULTS.catwalk.from), to: to ?? null, width: width ?? inches(DEFAULTS.catwalk.width), deckHeight: deckHeight ?? null,
      path: pathText(['catwalks', index]),
    }];
  });
}

/** How many catwalks stand on runs that this version does not build them on. */
export const laterCatwalks = (file: ProjectFile): number => (file.catwalks ?? []).filter(({ run }) => !isBuilt(run)).length;
