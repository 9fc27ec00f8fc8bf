import { isJsonObject, type Json, type JsonObject } from './json/types.ts';
import { touches, type FaultCode, type Path, type PathFault } from './path-fault.ts';
import { type ProjectFile } from './schema/project.ts';

/** A project as far as it could be read, with what is already known to be wrong in it. */
export interface Judged {
  readonly file: ProjectFile;
  /** The names in a group as the file writes it, those of faulty values too. */
  names(place: Path): readonly string[];
  readonly faults: PathFault[];
  /** Whether nothing can be said of the value at a place. */
  isFaulty(place: Path): boolean;
  /** Notes a fault; of one kind at one place only the first. */
  report(path: Path, code: FaultCode, params: PathFault['params']): void;
}

const sameKind = (a: PathFault, path: Path, code: FaultCode): boolean =>
  a.code === code && a.path.length === path.length && touches(a.path, path);

export function createJudged(written: JsonObject, file: ProjectFile, found: readonly PathFault[]): Judged {
  const faults = [...found];
  return {
    file,
    names(place) {
      const group = place.reduce<Json | undefined>((value, step) => (isJsonObject(value) ? value[String(step)] : undefined), written);
      return isJsonObject(group) ? Object.keys(group) : [];
    },
    faults,
    isFaulty: (place) => faults.some((fault) => touches(fault.path, place)),
    report(path, code, params) {
      if (!faults.some((fault) => sameKind(fault, path, code))) faults.push({ path, code, params });
    },
  };
}
