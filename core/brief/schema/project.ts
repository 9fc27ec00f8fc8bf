import { z } from 'zod';
import { RANGES } from '../ranges.ts';
import { fences } from './fences.ts';
import { byName, fields } from './groups.ts';
import { alley, chute, crowdPen } from './path-areas.ts';
import { shop } from './shop.ts';
import { catwalks, holdingPens, openings, ramps, returnAlley, sortPens, squeezePad } from './subjects.ts';
import { cattle, control, floors, footings, revision, revisions, site } from './surroundings.ts';
import { choice, mark, text } from './texts.ts';

export const PAPERS = ['ANSI A', 'ANSI B', 'ANSI C', 'ANSI D', 'ANSI E', 'ISO A4', 'ISO A3', 'ISO A2', 'ISO A1', 'ISO A0'] as const;

/**
 * A whole project file of the current version. Every field may be left out here: what is asked for is told by `missingFaults`, so that
 * a file without it is still judged in all the rest.
 */
export const project = fields({
  format: z.unknown(),
  version: z.unknown(),
  title: text(RANGES.title).optional(),
  client: text(RANGES.client).optional(),
  units: choice(['in', 'mm']).optional(),
  paper: choice(PAPERS).optional(),
  revision: revision.optional(),
  revisions: revisions.optional(),
  site: site.optional(),
  cattle: cattle.optional(),
  alley: alley.optional(),
  crowdPen: crowdPen.optional(),
  chute: chute.optional(),
  squeezePad: squeezePad.optional(),
  sortPens: sortPens.optional(),
  holdingPens: holdingPens.optional(),
  returnAlley: returnAlley.optional(),
  floors: floors.optional(),
  fences: fences.optional(),
  footings: footings.optional(),
  openings: openings.optional(),
  catwalks: catwalks.optional(),
  ramps: ramps.optional(),
  shop: shop.optional(),
  control: control.optional(),
  marks: byName(mark()).optional(),
});

export type ProjectFile = z.output<typeof project>;
