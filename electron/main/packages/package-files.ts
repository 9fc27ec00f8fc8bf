import { PACKAGE_KINDS } from '../../../core/package/kinds.ts';
import { MANIFEST_PATH, readManifest } from '../../../core/package/manifest.ts';
import { type HandedFile } from '../../bridge/desk.ts';
import { Refused, sha256 } from '../../disk/index.ts';
import { isProjectName } from '../projects/endings.ts';

const FOLDERS: ReadonlySet<string> = new Set(PACKAGE_KINDS.filter((kind) => kind !== 'stations'));
/** What stands in the package's folder itself, beside the project. */
const BESIDE: ReadonlySet<string> = new Set([MANIFEST_PATH, 'stations.json']);
/** One part of a path on any system: no control character, none of the marks that a system keeps for itself, no blank or dot at its end. */
const PART = /^(?!.*[. ]$)[^<>:"/\\|?*\u0000-\u001f\u007f]{1,120}$/;
const TAKEN = /^(con|prn|aux|nul|com[0-9]|lpt[0-9])(\.|$)/i;
const DEEPEST = 4;

/** Whether a path is that of a file which a package may hold, from its folder. */
export function isPackagePath(path: string): boolean {
  const parts = path.split('/');
  if (parts.length > DEEPEST || !parts.every((part) => PART.test(part) && !TAKEN.test(part) && !part.startsWith('.'))) return false;
  const [first = ''] = parts;
  return parts.length === 1 ? BESIDE.has(first) || isProjectName(first) : FOLDERS.has(first);
}

/**
 * The files that the page handed over, as a package. Refuses a path that is not a package's, the same path twice (in capitals or not,
 * for some systems tell no difference), and a manifest that does not list each file as it is: such a folder could never be
 * told from a person's own again. `shown` is the folder. Throws `Refused`.
 */
export function packageFiles(handed: readonly HandedFile[], kinds: readonly string[], shown: string): readonly HandedFile[] {
  const strange = handed.find(({ path }) => !isPackagePath(path));
  if (strange !== undefined) throw new Refused(strange.path, 'shell.package-path');
  const seen = new Set<string>();
  for (const { path } of handed) {
    if (seen.has(path.toLowerCase())) throw new Refused(path, 'shell.package-path');
    seen.add(path.toLowerCase());
  }
  if (!listsAll(handed, kinds)) throw new Refused(shown, 'shell.package-manifest');
  return handed;
}

function listsAll(handed: readonly HandedFile[], kinds: readonly string[]): boolean {
  const manifest = handed.find(({ path }) => path === MANIFEST_PATH);
  const told = manifest === undefined ? null : readManifest(new TextDecoder().decode(manifest.bytes));
  if (told?.files.length !== handed.length - 1 || [...told.kinds].sort().join() !== [...kinds].sort().join()) return false;
  const digests = new Map(told.files.map((file) => [file.path, file.sha256]));
  return handed.every(({ path, bytes }) => path === MANIFEST_PATH || digests.get(path) === sha256(bytes));
}
