/** What a package is made of, before it has a place on a disk. */
import { type PackageKind } from './kinds.ts';

/** A kind of files, or the two that every package holds. */
export type FileKind = PackageKind | 'project' | 'manifest';

export interface PackageFile {
  /** From the package's folder, with `/`. */
  readonly path: string;
  readonly kind: FileKind;
  /** What a person calls it. */
  readonly title: string;
  readonly bytes: Uint8Array;
}
