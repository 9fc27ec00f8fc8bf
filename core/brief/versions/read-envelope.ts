import { showValue } from '../json/show-value.ts';
import { isJsonObject, type Json, type JsonObject } from '../json/types.ts';
import { type PathFault } from '../path-fault.ts';
import { bringForward, CURRENT_VERSION } from './bring-forward.ts';

export const FORMAT = 'penwright-project';

function formatFault(format: Json | undefined): PathFault | null {
  if (format === FORMAT) return null;
  return format === undefined
    ? { path: ['format'], code: 'fault.missing', params: { allowed: `"${FORMAT}"` } }
    : { path: ['format'], code: 'fault.format', params: { value: showValue(format), allowed: FORMAT } };
}

function versionFault(version: Json | undefined): PathFault | null {
  if (version === undefined) return { path: ['version'], code: 'fault.missing', params: { allowed: CURRENT_VERSION } };
  if (typeof version === 'number' && Number.isInteger(version) && version >= 1) {
    return version > CURRENT_VERSION
      ? { path: ['version'], code: 'fault.version-newer', params: { value: version, greatest: CURRENT_VERSION } }
      : null;
  }
  return { path: ['version'], code: 'fault.version', params: { value: showValue(version), greatest: CURRENT_VERSION } };
}

export type Envelope =
  | { readonly ok: true; readonly project: JsonObject }
  | { readonly ok: false; readonly faults: readonly PathFault[] };

/** Knows a project of ours by `format` and `version` and brings it to the current version; another file's other fields are not judged. */
export function readEnvelope(value: Json): Envelope {
  if (!isJsonObject(value)) return { ok: false, faults: [{ path: [], code: 'fault.object', params: { value: showValue(value) } }] };
  const faults = [formatFault(value['format']), versionFault(value['version'])].filter((fault) => fault !== null);
  if (faults.length > 0) return { ok: false, faults };
  return { ok: true, project: bringForward(value, Number(value['version'])) };
}
