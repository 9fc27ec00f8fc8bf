import { inches, type Inches } from '../../base/quantity.ts';
import { type Section } from '../../steel/index.ts';
import { DEFAULTS } from '../defaults.ts';
import { type OpeningBrief } from '../opening-brief.ts';
import { pathText } from '../path-fault.ts';
import { type ProjectFile } from '../schema/project.ts';

type OpeningFile = NonNullable<ProjectFile['openings']>[number];

/** The openings of a project without faults; their defaults are noted elsewhere. `posts`: hinge posts looked up, by where the file names them. */
export function resolveOpenings(file: ProjectFile, posts: ReadonlyMap<string, Section>): readonly OpeningBrief[] {
  return (file.openings ?? []).map((opening, index) => resolveOpening(file, opening, pathText(['openings', index]), posts));
}

/** Throws where a gate has no side: the fault comes first. */
function resolveOpening(file: ProjectFile, opening: OpeningFile, path: string, posts: ReadonlyMap<string, Section>): OpeningBrief {
  const { kind, run, at, side, swings } = opening;
  const { held, width, gate, hangs, swings: usual } = DEFAULTS.opening;
  if (kind === 'backstop') return { kind, run, at, held: opening.held ?? held, path };
  if (side === undefined) throw new Error(`${path} has no side though no fault was told`);
  switch (kind) {
    case 'man-gate':
      return { kind, run, at, side, width: opening.width ?? inches(width), path };
    case 'alley-gate':
      return {
        kind, run, at, side, width: widthOf(file, run), swings: swings === 'back' ? 'back' : swings === undefined ? usual[kind] : 'forward',
        hingePost: posts.get(`${path}.hingePost`) ?? null, path,
      };
    case 'pen-gate':
      return {
        kind, run, at, side, width: opening.width ?? inches(gate), hangs: opening.hangs ?? hangs,
        swings: swings === 'out' ? 'out' : swings === undefined ? usual[kind] : 'in', hingePost: posts.get(`${path}.hingePost`) ?? null, path,
      };
  }
}

/** Clear width of a run that an alley gate shuts. */
function widthOf({ chute, crowdPen, returnAlley }: ProjectFile, run: string): Inches {
  const width = run.startsWith('chute') ? chute?.width : run.startsWith('return') ? returnAlley?.width ?? inches(DEFAULTS.returnWidth) : crowdPen?.radius;
  if (width === undefined) throw new Error(`the width of ${run} is unknown though no fault was told`);
  return width;
}
