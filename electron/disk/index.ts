/** The disk: a project read, a package put in its place, a project's marks written back. */
export { type Disk, errorCode } from './disk.ts';
export { nodeDisk } from './node-disk.ts';
export { type Refusal, Refused, plain, printRefusal } from './refusal.ts';
export { GREATEST_BYTES, readProject, type ProjectFile } from './read-project.ts';
export { liesIn, packagePlace } from './place.ts';
export { mend } from './mend.ts';
export { recognize, refuseLesser, sha256, type Standing } from './recognize.ts';
export { writePackage, type PackageToWrite } from './write-package.ts';
export { replaceFile, sameBytes, sweep } from './replace-file.ts';
export { withReason } from './with-reason.ts';
