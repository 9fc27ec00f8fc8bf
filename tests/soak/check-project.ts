import { createPipeline, makePackage, type Design } from '../../core/package/index.ts';
import { printFault } from '../../core/brief/index.ts';
import { packageTools } from '../../electron/command/tools.ts';
import { drawnBreaches, drawProject } from '../support/drawn.ts';
import { mirrorProject } from '../support/mirror-project.ts';
import { type ProjectJson } from '../support/random-brief.ts';

/** What became of one project: refused with its faults, or drawn, with all that does not hold of it. */
export type Checked = { readonly drawn: false; readonly faults: readonly string[] } | { readonly drawn: true; readonly breaches: readonly string[] };

const tools = packageTools();

function designed(project: ProjectJson): Design | readonly string[] {
  const pipeline = createPipeline(tools.font);
  const read = pipeline.read(JSON.stringify(project), null);
  if (!read.ok) return read.faults.map(printFault);
  const worked = pipeline.design(read.brief);
  return worked.ok ? worked.design : worked.faults.map(printFault);
}

/** The pieces by what is cut, whatever their places: what a mirrored project must have alike. */
const bag = (design: Design): string =>
  design.parts.pieces.map((piece) => `${piece.signature} ${piece.length.toFixed(4)} ${piece.weight.toFixed(4)}`).sort().join('\n');

/**
 * Every property that holds for any project: it is read and drawn without a throw, or refused in words; each drawing is as the drawings
 * contract asks; every piece is shown and marked; a mirrored project has the same pieces. `write` asks for the whole package
 * too, twice, for the same bytes.
 */
export async function checkProject(project: ProjectJson, write: boolean): Promise<Checked> {
  const design = designed(project);
  if ('length' in design) return { drawn: false, faults: design };
  const pipeline = createPipeline(tools.font);
  const outcome = drawProject(JSON.stringify(project));
  const breaches = outcome.drawn ? drawnBreaches(outcome.set) : [`refused when drawn: ${outcome.faults.join('; ')}`];
  if (pipeline.findings(design).length === 0) breaches.push('no findings');
  const other = designed(mirrorProject(project));
  if ('length' in other) breaches.push(`refused when mirrored: ${other.join('; ')}`);
  else if (bag(other) !== bag(design)) breaches.push('other pieces when mirrored');
  if (write) {
    const first = await digest(project, design);
    if (first !== await digest(project, design)) breaches.push('other bytes when written again');
  }
  return { drawn: true, breaches };
}

async function digest(project: ProjectJson, design: Design): Promise<string> {
  const all: string[] = [];
  const input = { text: JSON.stringify(project), design, defaults: [], only: null };
  for await (const { file } of makePackage(createPipeline(tools.font), input, tools)) all.push(`${file.path} ${tools.sha256(file.bytes)}`);
  return all.join('\n');
}
