import { type FileKind } from './types.ts';

/** A file still to be made: its place and name are known before its bytes are. */
export interface Job {
  readonly path: string;
  readonly kind: FileKind;
  readonly title: string;
  make(): Uint8Array | Promise<Uint8Array>;
}
