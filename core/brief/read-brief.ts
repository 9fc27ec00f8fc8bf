import { createJudged, type Judged } from './judged.ts';
import { judge } from './judge.ts';
import { parseJson } from './json/parse-json.ts';
import { type JsonObject } from './json/types.ts';
import { missingFaults } from './missing-faults.ts';
import { pathText, toFault, type PathFault } from './path-fault.ts';
import { countFields, prune } from './prune.ts';
import { resolveBrief } from './resolve/brief.ts';
import { createFiller } from './resolve/filler.ts';
import { issueFaults } from './schema/issue-faults.ts';
import { project, type ProjectFile } from './schema/project.ts';
import { type Brief, type DefaultUsed, type Fault } from './types.ts';
import { readEnvelope } from './versions/read-envelope.ts';

export type ReadBrief =
  | { readonly ok: true; readonly brief: Brief; readonly defaults: readonly DefaultUsed[] }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** The faults as a person gets them: of several at one place that say the same, and of a slip in a value and what follows from it, the first. */
function refused(faults: readonly PathFault[]): ReadBrief {
  const first = new Map<string, PathFault>();
  for (const fault of faults) {
    const place = pathText(fault.path);
    if (!first.has(place)) first.set(place, fault);
  }
  return { ok: false, faults: [...first.values()].map(toFault) };
}

/** What is left of a project when everything faulty is taken out, and with it what cannot do without. */
function readRest(value: JsonObject, found: readonly PathFault[]): ProjectFile {
  let rest = value;
  let faults = found;
  for (;;) {
    const smaller = prune(rest, faults.map(({ path }) => path));
    const read = project.safeParse(smaller);
    if (read.success) return read.data;
    faults = read.error.issues.flatMap((issue) => issueFaults(issue, smaller));
    // Each round takes a field away; one that takes none would never end.
    if (countFields(smaller) >= countFields(rest)) throw new Error(`nothing to take out at ${faults.map(({ path }) => pathText(path)).join(', ')}`);
    rest = smaller;
  }
}

/** What the schema finds in a project, and the project as far as it can be read. */
function readFields(value: JsonObject, before: readonly PathFault[]): { readonly faults: readonly PathFault[]; readonly file: ProjectFile } {
  const read = project.safeParse(value);
  const found = read.success ? [] : read.error.issues.flatMap((issue) => issueFaults(issue, value));
  return { faults: [...before, ...found, ...missingFaults(value)], file: read.success ? read.data : readRest(value, found) };
}

function readProject(value: JsonObject, before: readonly PathFault[]): ReadBrief {
  const { faults, file } = readFields(value, before);
  const judged: Judged = createJudged(value, file, faults);
  const looked = judge(judged);
  if (judged.faults.length > 0) return refused(judged.faults);
  const filler = createFiller(file.units ?? 'in');
  return { ok: true, brief: resolveBrief(file, looked, filler), defaults: filler.used };
}

/**
 * The one door through which a project file comes in: the text of `*.penwright.json` to a complete brief, with every default that was
 * used; or every fault in it at once, each with its path and what is allowed. An older version is brought forward, a newer one refused.
 * Never throws on any text.
 */
export function readBrief(text: string): ReadBrief {
  const { value, faults } = parseJson(text);
  if (value === undefined) return refused(faults);
  const envelope = readEnvelope(value);
  return envelope.ok ? readProject(envelope.project, faults) : refused([...faults, ...envelope.faults]);
}
