/** From a project's text to every file of its package. */
export { createPipeline, type Design, type Pipeline, type Units } from './pipeline.ts';
export { earlierDesign } from './earlier-design.ts';
export { makePackage, type Made, type PackageInput } from './make-package.ts';
export { BUILT_KINDS, isPackageKind, PACKAGE_KINDS, type PackageKind } from './kinds.ts';
export { keepMarks } from './keep-marks.ts';
export { MANIFEST_PATH, readManifest, type Manifest } from './manifest.ts';
export { type PackageTools } from './tools.ts';
export { type FileKind, type PackageFile } from './types.ts';
export { reuse } from './reuse.ts';
export { type Schedules } from './schedule-rows.ts';
export { type ScheduleTable, scheduleTables } from './schedule-tables.ts';
