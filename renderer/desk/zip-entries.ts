import { zipSync, type Zippable } from 'fflate';
import { type HandedFile } from '../../electron/bridge/desk.ts';

/** Every entry bears the same date, so that the same package gives the same bytes: the first day that a zip can say, in any time zone. */
const DATE = new Date(1980, 0, 1, 0, 0, 0);

/** A package as a zip, its entries in the order given. */
export function zipEntries(files: readonly HandedFile[]): Uint8Array {
  const entries: Zippable = Object.fromEntries(files.map(({ path, bytes }) => [path, [bytes, { mtime: DATE, level: 6 }]]));
  return zipSync(entries);
}
