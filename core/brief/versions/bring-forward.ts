import { type JsonObject } from '../json/types.ts';

/** One step forward: the project of version n, whole, to the project of version n + 1. Pure; never refuses. */
export type VersionStep = (project: JsonObject) => JsonObject;

/** `STEPS[n - 1]` brings version n to n + 1. None yet: version 1 is the first. Each comes with a frozen example in the tests. */
export const STEPS: readonly VersionStep[] = [];

/** The version that this code reads without a step. */
export const CURRENT_VERSION = STEPS.length + 1;

/** Brings an older project forward, step by step; one of the current version comes back as it is. Throws for any other version. */
export function bringForward(project: JsonObject, version: number, steps: readonly VersionStep[] = STEPS): JsonObject {
  if (!Number.isInteger(version) || version < 1 || version > steps.length + 1) throw new Error(`no such version: ${String(version)}`);
  return steps.slice(version - 1).reduce((older, step) => step(older), project);
}
