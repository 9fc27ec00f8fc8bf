import { inches } from '../../base/quantity.ts';
import { type Section } from '../../steel/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { type OpeningBrief } from '../opening-brief.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';

/** Runs whose fences this version builds; those of the others are counted by `laterOpenings`. */
const isBuilt = (run: string): boolean => /^(crowd-pen|junction|chute|squeeze-pad|(alley|chute|sort)-\d+)$/.test(run);

type OpeningFile = NonNullable<ProjectFile['openings']>[number];

/** The openings of a project without faults; their defaults are noted elsewhere. `posts`: hinge posts looked up, by where the file names them. */
export function resolveOpenings(file: ProjectFile, posts: ReadonlyMap<string, Section>): readonly OpeningBrief[] {
  return (file.openings ?? []).flatMap((opening, index): readonly OpeningBrief[] =>
    (isBuilt(opening.run) ? [resolveOpening(opening, pathText(['openings', index]), posts)] : []));
}

/** Throws where a gate has no side: the fault comes first. */
function resolveOpening(opening: OpeningFile, path: string, posts: ReadonlyMap<string, Section>): OpeningBrief {
  const { kind, run, at, side, swings } = opening;
  const { held, width, gate, hangs, swings: usual } = DEFAULTS.opening;
  if (kind === 'backstop') return { kind, run, at, held: opening.held ?? held, path };
  if (side === undefined) throw new Error(`${path} has no side though no fault was told`);
  switch (kind) {
    case 'man-gate':
      return { kind, run, at, side, width: opening.width ?? inches(width), path };
    case 'alley-gate':
      return { kind, run, at, side, swings: swings === 'back' ? 'back' : swings === undefined ? usual[kind] : 'forward', path };
    case 'pen-gate':
      return {
        kind, run, at, side, width: opening.width ?? inches(gate), hangs: opening.hangs ?? hangs,
        swings: swings === 'out' ? 'out' : swings === undefined ? usual[kind] : 'in', hingePost: posts.get(`${path}.hingePost`) ?? null, path,
      };
  }
}

/** How many openings stand on runs that this version does not build. */
export const laterOpenings = (file: ProjectFile): number => (file.openings ?? []).filter(({ run }) => !isBuilt(run)).length;
