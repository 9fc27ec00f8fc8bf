import { inches } from '../../base/quantity.ts';
import { type CatwalkBrief } from '../catwalk-brief.ts';
import { DEFAULTS } from '../defaults.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';

/** The catwalks of a project without faults; their defaults are noted elsewhere. */
export function resolveCatwalks(file: ProjectFile): readonly CatwalkBrief[] {
  return (file.catwalks ?? []).map(({ run, side, from, to, width, deckHeight }, index): CatwalkBrief => ({
    run, side, from: from ?? inches(DEFAULTS.catwalk.from), to: to ?? null, width: width ?? inches(DEFAULTS.catwalk.width), deckHeight: deckHeight ?? null,
    path: pathText(['catwalks', index]),
  }));
}
