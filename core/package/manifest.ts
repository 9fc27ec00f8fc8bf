import { z } from 'zod';
import { type PackageKind } from './kinds.ts';
import { type PackageFile } from './types.ts';

export const MANIFEST_PATH = 'manifest.json';

const fileSchema = z.object({
  path: z.string().min(1),
  kind: z.string(),
  title: z.string(),
  bytes: z.int().min(0),
  sha256: z.string().regex(/^[0-9a-f]{64}$/),
});

const manifestSchema = z.object({
  format: z.literal('penwright-package'),
  version: z.literal(1),
  project: z.string(),
  revision: z.string(),
  date: z.string(),
  units: z.enum(['in', 'mm']),
  kinds: z.array(z.string()),
  files: z.array(fileSchema),
});

/** What a package says of itself; `files` are all of it but the manifest. */
export type Manifest = Readonly<z.infer<typeof manifestSchema>>;

export interface ManifestHead {
  readonly project: string;
  readonly revision: string;
  /** The project's own, or empty. */
  readonly date: string;
  readonly units: 'in' | 'mm';
  readonly kinds: readonly PackageKind[];
}

/** The manifest of a package's other files, in their order. `sha256` gives the digest in lower-case hexadecimal. */
export function makeManifest(head: ManifestHead, files: readonly PackageFile[], sha256: (bytes: Uint8Array) => string): Manifest {
  return {
    format: 'penwright-package',
    version: 1,
    project: head.project,
    revision: head.revision,
    date: head.date,
    units: head.units,
    kinds: [...head.kinds],
    files: files.map(({ path, kind, title, bytes }) => ({ path, kind, title, bytes: bytes.length, sha256: sha256(bytes) })),
  };
}

/** The manifest in a text, or null where it is not one that this version wrote or could have written. */
export function readManifest(text: string): Manifest | null {
  try {
    const result = manifestSchema.safeParse(JSON.parse(text), { jitless: true });
    return result.success ? result.data : null;
  } catch {
    return null;
  }
}
