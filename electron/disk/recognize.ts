import { createHash } from 'node:crypto';
import { join } from 'node:path';
import { MANIFEST_PATH, type Manifest, readManifest } from '../../core/package/manifest.ts';
import { type Disk } from './disk.ts';
import { Refused } from './refusal.ts';
import { readTree, strangerIn } from './tree.ts';

/** What stands where a package is to go. `files` are all that it holds, from the folder. */
export type Standing =
  | { readonly kind: 'nothing' }
  | { readonly kind: 'empty' }
  | { readonly kind: 'package'; readonly manifest: Manifest; readonly files: readonly string[] };

export const sha256 = (bytes: Uint8Array): string => createHash('sha256').update(bytes).digest('hex');

/**
 * Looks at the place of a package. Only what is wholly a package of ours may be replaced: every file that stands there is in its
 * manifest and holds what the manifest says. A file that a person added or changed makes it theirs; one that they
 * deleted does not, for nothing of theirs is lost. Throws `Refused` where it may not be replaced.
 * `shown` is the path as a person gave it.
 */
export async function recognize(disk: Disk, folder: string, shown: string): Promise<Standing> {
  const kind = await disk.kindOf(folder);
  if (kind === null) return { kind: 'nothing' };
  if (kind !== 'folder') throw new Refused(shown, 'command.out-not-folder');
  const tree = await readTree(disk, folder);
  if (tree.files.length + tree.folders.length + tree.others.length === 0) return { kind: 'empty' };
  if (!tree.files.includes(MANIFEST_PATH)) throw new Refused(shown, 'command.out-no-manifest');
  const manifest = readManifest(new TextDecoder().decode(await disk.read(join(folder, MANIFEST_PATH))));
  if (manifest === null) throw new Refused(shown, 'command.out-foreign-manifest');
  const listed = [...manifest.files.map((file) => file.path), MANIFEST_PATH];
  const stranger = strangerIn(tree, listed);
  if (stranger !== null) throw new Refused(shown, 'command.out-stranger', { file: stranger });
  const standing = new Set(tree.files);
  for (const file of manifest.files) {
    if (standing.has(file.path) && sha256(await disk.read(join(folder, file.path))) !== file.sha256) {
      throw new Refused(shown, 'command.out-edited', { file: file.path });
    }
  }
  return { kind: 'package', manifest, files: tree.files };
}

/** Refuses to let a package with fewer kinds of files take the place of one with more. */
export function refuseLesser(standing: Standing, kinds: readonly string[], shown: string): void {
  if (standing.kind !== 'package') return;
  const lost = standing.manifest.kinds.filter((kind) => !kinds.includes(kind));
  if (lost.length > 0) throw new Refused(shown, 'command.out-fuller', { kinds: lost.join(', ') });
}
